# The door for text messages: who comes in by telephone, and why a gateway's request is refused.

sms-owner = Welcome{ HAS($name) ->
    [yes] , { $name }
   *[no] {""}
}. This book is yours. Begin with a pile: new pile called creek, 40 by 120. Text "invite" for a code for one more person.
sms-crew = Welcome{ HAS($name) ->
    [yes] , { $name }
   *[no] {""}
}. Text what was done, as to a neighbor; ask what you want to know.
sms-no-owner = Nobody owns this book yet. Text the owner code that the program showed when it started, and your name.
sms-code-spent = That code is used up or too old. Ask the owner for a new one.
sms-stranger = This number is for the crew only. Ask the owner for a code.
sms-already = You are in already. No code needed.
sms-invite = Code for one person{ $role ->
    [viewer] {""}, to ask only
   *[crew] {""}
}, good until { $until }: { $code }. They text it here, then their name.
sms-viewer = Welcome{ HAS($name) ->
    [yes] , { $name }
   *[no] {""}
}. Ask what you want to know; only the crew can log.
sms-one = { HAS($name) ->
    [yes] { $name } { $phone }
   *[no] { $phone }
}, { $role ->
    [owner] owner
    [viewer] asks only
   *[crew] crew
}
sms-removed = { $name } is out. Their messages get no answer any more.
sms-left = You are out of this farm's book. Ask the owner for a code to come back.
sms-owner-stays = A farm needs an owner. Make somebody else the owner first.
sms-trouble = Something broke here. Your message is kept, but nothing in it was logged yet. No need to send it again.
sms-about = about
sms-port = The door for text messages cannot be opened at { $host }, port { $port }: { $why }. Name another in SMS_HOST and SMS_PORT.

sms-path = There is only { $path } here.
sms-method = Only POST is taken.
sms-type = The body must be application/json.
sms-size = The body is longer than { $most } bytes.
sms-time = The header Pilehand-Time is missing, or more than five minutes off. It holds whole seconds since 1970.
sms-signature = The header Pilehand-Signature is not the HMAC-SHA256 of the time, a full stop and the body, in hexadecimal.
sms-replayed = This very request was taken before. To try again, sign anew with the same id.
sms-body = The field { $field } cannot be used: { $why }.
sms-often = Too many messages of this number. Try again in { $seconds } seconds.
sms-busy = The message could not be stored. Try again later.
