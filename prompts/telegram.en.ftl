# The door of the Telegram channel: who comes in, where it speaks, and what stops it.

telegram-owner = Welcome, { $name }. This book is yours. Begin with a pile: new pile called creek, 40 by 120. /invite makes a code for one more person; /here, sent in the crew's group, lets me work there.
telegram-crew = Welcome, { $name }. Text what was done, as to a neighbour; ask what you want to know.
telegram-no-owner = Nobody owns this book yet. Send the owner code that the program showed when it started.
telegram-code-spent = That code is used up or too old. Ask the owner for a new one.
telegram-stranger = This book is for the crew only. Ask the owner for a code.
telegram-already = No need for a code, the door is open to you already.
telegram-invite = Code for one person, good to { $until }: { $code }
    { $link }
telegram-invite-private = Ask for a code in the private chat, not here.
telegram-here = This group is the farm's now. What is said here goes in the book.
telegram-here-hidden = This group is the farm's now, but Telegram shows me only commands, replies to me and what names { $name }. Make me an administrator of the group to hear all.
telegram-here-private = Type /here in the crew's group.
telegram-not-here = This group is not the farm's. The owner can type /here to change that.
telegram-words-only = I can only read words. Write what it shows; a picture can have them below it.
telegram-trouble = Something broke here. Your message is kept, but nothing in it was logged yet. No need to send it again.
telegram-settled = That is settled already.
telegram-token-refused = Telegram does not take the token in TELEGRAM_TOKEN. Get the right one from BotFather.
telegram-second-reader = Another program reads this bot's messages. Stop it first; one bot has one reader.
