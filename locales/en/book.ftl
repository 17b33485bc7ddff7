# What can go wrong with the data on disk. Pairs: what happened, what to do. Shown in a terminal.
# $path is a file or folder.
book-locked = Another Carvetime is using { $path }.
book-locked-do = Stop it first, or choose another folder with --data.
# $reason comes from the operating system, in its own words.
book-disk = { $path } can't be used: { $reason }.
book-disk-do = Check the disk's free space and the folder's permissions, then start again.
# $detail says where, for a report.
book-damaged = The saved data is damaged ({ $detail }).
book-damaged-do = Move the data folder away, keep it, and restore a backup with: carvetime restore FILE
book-newer = The saved data comes from a newer Carvetime.
book-newer-do = Use that version or a later one.
book-file-exists = { $path } exists already.
book-file-exists-do = Choose another name; nothing was overwritten.
book-not-empty = { $path } holds data already.
book-not-empty-do = Choose an empty folder with --data; nothing was changed.
# $line is the number of the line in the file.
book-bad-backup = { $path } is not a whole backup: line { $line } can't be used.
book-bad-backup-do = Use another backup; nothing was changed.
# $aside: where the damaged data lie; $export: what took their place.
book-recovered = The saved data was damaged and is kept in { $aside }. I went on from the export { $export }; { $missing ->
    [0] nothing that came after it is known to be missing.
    [one] one message that came after it, heard or said, is missing.
   *[other] { $missing } messages that came after it, heard or said, are missing.
}
