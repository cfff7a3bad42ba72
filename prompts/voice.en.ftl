# Voice notes: what was heard, what is asked about it, and why a note could not be heard.

voice-heard = Heard: "{ $text }"
ask-heard-one = Is that right: { $what }?
# `list`: the values that one slot may have had, with "or" between them.
ask-heard-slot = { CAP($list) }?
ask-heard = Which was it?
heard-value = { $slot ->
    [pile] { $value }
    [toPile] { $value }
   *[other] { slot-value }
}
voice-again = Not sure enough of that to write it down. Say it again, or type it.
voice-unclear = Could not make that out. Say it again slower, or type it. Si fue en español, escríbelo.
voice-nothing = Nothing could be heard in that voice note. Hold the phone closer, or type it. Si fue en español, escríbelo.
voice-no-spanish = This computer only hears English. Type it, in Spanish or English.
voice-off = Voice notes cannot be heard here: no recogniser is set up. Type it instead.
voice-too-long = That voice note is longer than { $most } seconds. Say it in shorter ones.
voice-too-large = That voice note is too large. Say it in shorter ones.
voice-unreadable = That voice note could not be read ({ $why }). Send it again, or type it.
voice-lost = That voice note could not be fetched. Send it again, or type it.
voice-slow = It took too long to make out that voice note. Say it in shorter ones, or type it.
voice-trouble = The recogniser failed ({ $why }). Type it instead; the owner can look into it.

# The recogniser that comes with the program is not installed.
ear-program-missing = The recogniser { $name } is not installed. On Debian: apt-get install pocketsphinx pocketsphinx-en-us
ear-model-missing = No usable speech model in { $folder } ({ $why }). On Debian: apt-get install pocketsphinx-en-us
