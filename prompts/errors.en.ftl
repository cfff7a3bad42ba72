# What went wrong around the book, and what to do about it. One line each; names and paths as they are.

folder-unwritable = Cannot write in the folder { HAS($folder) ->
    [yes] { $folder }
   *[no] of the book
}. Allow writing there, or name another in PILEHAND_DATA.
store-locked = This book is open already{ HAS($folder) ->
    [yes] {" "}in { $folder }
   *[no] {""}
}. Stop the other Pilehand first, or name another folder in PILEHAND_DATA.
store-newer = This book was written by a newer Pilehand{ HAS($found) ->
    [yes] {" "}(version { $found }{ HAS($known) ->
        [yes] , this one knows { $known }
       *[no] {""}
    })
   *[no] {""}
}. Update this one; nothing in the book was changed.
store-corrupt = The book cannot be read{ HAS($why) ->
    [yes] {" "}({ $why })
   *[no] {""}
}. Put back the last copy; nothing was changed.
zone-unknown = There is no time zone { $zone }. Use a name like America/Chicago.
config-wrong = { $name } cannot be used: { $why }.
bad-json = This line is not JSON{ HAS($why) ->
    [yes] {" "}({ $why })
   *[no] {""}
}. Send one object on each line.
bad-line-field = The field { $field } cannot be used: { $why }.
clock-backwards = The time "at" is earlier than on the line before{ HAS($last) ->
    [yes] {" "}({ $last })
   *[no] {""}
}. Within a farm it never goes back.
store-full = The disk is full{ HAS($folder) ->
    [yes] {" "}at { $folder }
   *[no] {""}
}. Make room; what was written before is safe.
store-trouble = The book cannot be written{ HAS($why) ->
    [yes] {" "}({ $why })
   *[no] {""}
}. What was written before is safe.
entry-unreadable = Entry { $n } of { $farm } cannot be read ({ $why }). Put back the last copy, or update; nothing was changed.
entry-refused = Entry { $n } of { $farm } is not whole ({ $why }) and was not written.
entry-order = Entry { $n } of { $farm } is out of order, { $wanted } comes next; it was not written.
