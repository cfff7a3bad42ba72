# The door of the Telegram channel: who comes in, where it speaks, and what stops it.

telegram-owner = Welcome, { $name }. This book is yours. Begin with a pile: new pile called creek, 40 by 120. /invite makes a code for one more person; /here, sent in the crew's group, lets me work there.
telegram-crew = Welcome, { $name }. Text what was done, as to a neighbour; ask what you want to know.
telegram-viewer = Welcome, { $name }. Ask what you want to know; only the crew can log.
telegram-no-owner = Nobody owns this book yet. Send the owner code that the program showed when it started.
telegram-code-spent = That code is used up or too old. Ask the owner for a new one.
telegram-stranger = This book is for the crew only. Ask the owner for a code.
telegram-already = You are in already. No code needed.
telegram-invite = { $role ->
    [viewer] Code for one person who may only ask
   *[crew] Code for one person
}{ HAS($name) ->
    [yes] {" "}({ $name })
   *[no] {""}
}, good until { $until }: { $code }
    { $link }
telegram-invite-private = Ask for a code in the private chat, not here.
telegram-here = This group is the farm's now. I am shown all that is said here, so plain lines go in the book and talk is left alone. To show me less, make me a plain member and turn group privacy on with BotFather. /away ends it.
telegram-here-hidden = This group is the farm's now, but I am shown only commands, replies to me and lines that name { $name }. To show me all, make me an administrator here, or turn group privacy off with BotFather and add me anew. /away ends it.
telegram-here-private = Type that in the crew's group.
telegram-not-here = This group is not the farm's. The owner can type /here to change that.
telegram-away = This group is not the farm's any more. What was logged stays in the book.
telegram-added = Type /here and I work in this group. Until then nothing said here goes anywhere.
telegram-added-crew = Ask the owner to type /here, and I work in this group. Until then nothing said here goes anywhere.
telegram-words-only = I can only read words. Write what it is about.
telegram-picture-words = What does the picture show? Send it with words below it, like: two holes by the wall. Or send it as a reply to the message it goes with.
telegram-picture-kept = Picture kept with that.
telegram-place-known = I know where the farm is. To change it, write its latitude and longitude, like: we are at 43.07, -89.40.
telegram-no-ear = I cannot hear voice notes here. Please type it.
telegram-forward-known = That one is in the book already.
telegram-crew-list = { $people }
    Let somebody go with /remove. Change what somebody may do with /role, the name, and owner, crew or viewer.
telegram-crew-one = { $name }: { $role ->
    [owner] owner
    [viewer] may ask
   *[crew] crew
}
telegram-role-how = Write it like this: /role Walt viewer. It can be owner, crew or viewer.
telegram-role-set = { $name } is { $role ->
    [owner] an owner
    [viewer] a viewer: may ask, and not log
   *[crew] crew
} now.
telegram-owner-stays = A farm needs an owner. Make somebody else one first: /role Walt owner.
telegram-nobody-else = Nobody else is in yet. /invite makes a code.
telegram-nobody = Nobody here goes by that name. /crew lists everybody.
telegram-remove-whom = Who leaves the crew?
telegram-removed = { $name } is out. What { $name } logged stays in the book.
telegram-leave-sure = Leave the crew? You need a new code to come back.
telegram-left = You are out, { $name }. What you logged stays in the book.
telegram-unreachable = { $name } has blocked me on Telegram, so nothing I send gets there until { $name } writes to me again.
telegram-export-private = The book goes out in your private chat only.
telegram-export-begun = Writing { $count } records, one moment.
telegram-export = The whole book, { $count } records, one to a line.
telegram-trouble = Something broke here. Your message is kept, but nothing in it was logged yet. No need to send it again.
telegram-settled = That is settled already.
telegram-token-refused = Telegram does not take the token in TELEGRAM_TOKEN. Get the right one from BotFather.
telegram-second-reader = Another program reads this bot's messages. Stop it first; one bot has one reader.
telegram-webhook-refused = Telegram does not take the address in TELEGRAM_WEBHOOK ({ $why }).
telegram-webhook-port = The port in TELEGRAM_WEBHOOK_LISTEN cannot be opened ({ $why }).

menu-today = What was done today
menu-left = How many days the feed lasts
menu-covers = When the covers were walked, and what is open
menu-stock = Plastic, tires and tape at hand
menu-undo = Take back the last record
menu-help = What can be said
menu-invite = A code for one more person
menu-crew = Who is in, and what they may do
menu-export = The whole book as a file
