# What is wrong with a home file. Each problem has a cause and a remedy.
# Shared places: { $path } is where it stands, in the file's own words; { $field } a field of the file;
# { $found } what the file says there; { $nearest } what was perhaps meant, if { $suggested } is yes.

## The text cannot be read

problem-empty-file = The file holds no home.
problem-empty-file-remedy = Begin it with Home( and give it a format and a name, or take it from a backup.

problem-unclosed = The bracket { $bracket } that is opened here is never closed, so the file cannot be read.
problem-unclosed-remedy = Put the closing bracket where the group ends.

problem-wrong-bracket = The bracket { $bracket } that is opened here is still open where { $found } stands in line { $other_line }, column { $other_column }. The file cannot be read.
problem-wrong-bracket-remedy = Close the bracket before that place, or take out what does not belong there.

problem-unclosed-text = The quotation mark here has no partner, so the file cannot be read.
problem-unclosed-text-remedy = Put a quotation mark where the text ends.

problem-unclosed-comment = The comment that begins here never ends, so the file cannot be read.
problem-unclosed-comment-remedy = Put */ where the comment ends.

problem-unreadable = The file cannot be read from here on: { $found }
problem-unreadable-remedy = Fields are written as name: value, with a comma between two of them. Look for a quotation mark, a bracket or a colon that is missing just before.

problem-too-deep = Brackets are nested more than { $deepest } deep here, so the file cannot be read.
problem-too-deep-remedy = A home needs five levels of brackets. Look for brackets that do not close.

problem-not-a-home = The file does not hold a home. It begins with: { $found }
problem-not-a-home-remedy = Begin it with Home( and give it a format and a name.

problem-missing-comma = A comma is missing here. The file was read as if it were there.
problem-missing-comma-remedy = Put a comma here.

problem-extra-comma = There is a comma too many here. The file was read without it.
problem-extra-comma-remedy = Take the comma out.

problem-text-after-home = The home ends before this text, which was not read: { $found }
problem-text-after-home-remedy = Move it inside the last bracket, or look for a bracket that closes too early.

problem-unknown-extension = The first line enables { $found }, which is not known. It makes no difference.
problem-unknown-extension-remedy = Take it out.

## The format

problem-format-missing = The file does not say which format it is in. It was read as format { $newest }.
problem-format-missing-remedy = Write format: { $newest } first.

problem-format-newer = The file is in format { $found }, which is newer than this version knows ({ $newest }). Something may be missing or wrong in what it shows.
problem-format-newer-remedy = Use a newer version of the program. This version does not save over the file.

problem-format-unreadable = The format is not a whole number: { $found }. The file was read as format { $newest }.
problem-format-unreadable-remedy = Write format: { $newest }. Until then this file is not saved over.

## Fields

problem-missing-field = { $path }: the field { $field } is missing.
problem-missing-field-remedy = Add { $field }.

problem-unknown-field = { $path }: there is no field { $field }. It was passed over.
problem-unknown-field-remedy = { $suggested ->
    [yes] Write { $nearest } if that was meant. Otherwise put it into the note.
   *[no] Take it out, or put it into the note.
}

problem-field-twice = { $path }: the field { $field } stands twice. The first is in line { $other_line }, column { $other_column }, and was taken.
problem-field-twice-remedy = Take one of them out.

problem-wrong-type = { $path }: { $field } cannot be { $found }. { $wanted ->
    [text] It must be a text in quotation marks.
    [number] It must be a number.
    [whole-number] It must be a whole number.
    [yes-or-no] It must be true or false.
    [list] It must be a list in square brackets.
    [group] It must be fields in round brackets.
    [point] It must be three numbers in round brackets.
    [place] It must be two numbers in round brackets.
    [pair] It must be two ids in round brackets.
    [range] It must be two numbers in round brackets, the smaller one first.
    [outline] It must be a list of points, each of two numbers in round brackets.
    [name] It must be one of the names that the file format has.
   *[other] It must be something else.
} It was left out.
problem-wrong-type-remedy = { $wanted ->
    [text] Write it in quotation marks, such as "hall".
    [number] Write it as a number in SI units, such as 2.5.
    [whole-number] Write it as a whole number, such as 2.
    [yes-or-no] Write true or false.
    [list] Write it as a list, such as ["a", "b"].
    [group] Write it as fields, such as (id: "hall", name: "Hall").
    [point] Write it as x, y and height in metres, such as (2.1, 3.0, 0.4).
    [place] Write it as x and y in metres, such as (2.1, 3.0).
    [pair] Write it as two ids, such as ("hall", "kitchen").
    [range] Write it as least and most, such as (12.0, 40.0).
    [outline] Write it as corners in metres, such as [(0.0, 0.0), (3.0, 0.0), (3.0, 2.0)].
   *[other] Write it without quotation marks and brackets, as the list of names in the documentation has it.
}

problem-unreadable-text = { $path }: the text of { $field } cannot be read: { $found }. It was left out.
problem-unreadable-text-remedy = A backslash begins a special sign. Write two for a backslash, or / in the path of a file.

problem-out-of-range = { $path }: { $field } cannot be { $found }. It was left out.
problem-out-of-range-remedy = Give a value from { $least } to { $most }, or leave the field out if it is not known.

problem-no-direction = { $path }: { $field } cannot be { $found }: a direction is from 0 up to less than 360 degrees. It was left out.
problem-no-direction-remedy = { $suggested ->
    [yes] Write { $better } for the same direction. Degrees run clockwise from the top of the plan: 0 is up, 90 right, 180 down, 270 left.
   *[no] Write the degrees clockwise from the top of the plan: 0 is up, 90 right, 180 down, 270 left. Leave the field out if it is not known.
}

problem-unknown-value = { $path }: { $found } is no value of { $field } that is known.
problem-unknown-value-remedy = { $suggested ->
    [yes] Write { $nearest } if that was meant. It can be one of: { $known }.
   *[no] It can be one of: { $known }.
}

problem-quoted-name = { $path }: { $found } stands in quotation marks, which names do not have. It was taken as meant.
problem-quoted-name-remedy = Take the quotation marks off.

problem-unknown-kind = { $path }: there is no kind { $found }. The component was taken as a plain piece of line.
problem-unknown-kind-remedy = { $suggested ->
    [yes] Write { $nearest } if that was meant.
   *[no] Choose a kind from the list in the documentation, or Other.
}

problem-unreadable-date = { $path }: { $found } in { $field } is not a day. It was left out.
problem-unreadable-date-remedy = Write year, month and day, in quotation marks, such as "2026-05-02".

problem-other-name = { $path }: this is called { $found }, where { $wanted } is expected. It was read as { $wanted }.
problem-other-name-remedy = Write { $wanted }, or no name at all. Look whether it belongs in another list.

## Ids

problem-empty-id = { $path }: the id is empty.
problem-empty-id-remedy = Give it an id of small letters, digits and hyphens.

problem-odd-id = { $path }: the id { $found } has signs that do not work on tags and in links.
problem-odd-id-remedy = Use small letters, digits and hyphens, such as { $better }, and change it wherever the file refers to it.

problem-duplicate-id = The id { $id } is given twice in { $list }. The first is in line { $other_line }, column { $other_column }, and was taken.
problem-duplicate-id-remedy = Give this one another id, and look which of the two each connection means.

problem-shared-id = The id { $id } is used in { $list } and in { $other_list } (line { $other_line }, column { $other_column }), so a question about it can mean either.
problem-shared-id-remedy = Give one of them another id.

problem-unknown-id = { $path }: { $field } names { $id }, and nothing in { $list } has that id. It was left out.
problem-unknown-id-remedy = { $suggested ->
    [yes] Write { $nearest } if that was meant. Otherwise add { $id } to { $list }.
   *[no] Add { $id } to { $list }, or write an id that is there.
}

problem-unknown-owner = { $path }: the owner { $id } is not in contacts, so nobody can be named to call.
problem-unknown-owner-remedy = { $suggested ->
    [yes] Write { $nearest } if that was meant. Otherwise add { $id } to contacts.
   *[no] Add { $id } to contacts, with a telephone number.
}

## Passages

problem-passage-to-itself = { $path }: the passage leads from { $one } to itself. It was left out.
problem-passage-to-itself-remedy = Write the ids of the two spaces on its sides.

problem-stairs-on-one-level = { $path }: stairs lead from { $one } to { $other }, and both are on the same level.
problem-stairs-on-one-level-remedy = Take stairs out if it is a door, or look at the levels of the two spaces.

problem-door-between-levels = { $path }: { $one } and { $other } are on different levels, and this passage is not marked as stairs.
problem-door-between-levels-remedy = Write stairs: true, and where they end as to_at, or look at the levels of the two spaces.

problem-door-in-two-places = { $path }: a door from { $one } to { $other } is in one place, and has no to_at. It was left out.
problem-door-in-two-places-remedy = Take to_at out, or write stairs: true if these are stairs.

## Connections

problem-to-itself = { $path }: the connection leads from { $from } to itself. It was left out.
problem-to-itself-remedy = Write the id of what it leads to.

problem-cannot-meet = { $path }: { $id } is a { $kind } and cannot carry { $carries }. The connection was left out.
problem-cannot-meet-remedy = Look whether the two ends, the kind of { $id } and what the connection carries are right.

problem-media-mix = { $path }: { $id } would carry { $carries } and { $medium }, which mix in a plain piece of line. The other connection is in line { $other_line }, column { $other_column }. This one was left out.
problem-media-mix-remedy = Look which of the two is right. Where one line crosses another without touching it, they are two components.

problem-drain-loop = { $path }: with this connection the drain would run in a loop: { $ids }. Water does not run uphill, so the connection was left out.
problem-drain-loop-remedy = Look which connection of the loop goes the wrong way, and swap its from and to.

## The whole

problem-no-components = The home has no components, so no question about it can be answered.
problem-no-components-remedy = Begin with where the water comes in, the main shutoff, and the breaker panel.

## The log of troubles
problem-not-a-log = The file does not hold a log of troubles. It begins with: { $found }
problem-not-a-log-remedy = Begin it with Log( and give it a format and entries. Until then nothing is saved over it.

problem-text-after-log = The log ends before this text, which was not read: { $found }
problem-text-after-log-remedy = Move it inside the last bracket, or look for a bracket that closes too early.

problem-unreadable-time = { $path }: { $field } is no time of day: { $found }. It was left out.
problem-unreadable-time-remedy = Write hours and minutes, from "00:00" to "23:59".

problem-one-lesson = { $path }: what was learnt is not clear. The entry stays in the file as it is.
problem-one-lesson-remedy = Write one of these: state, tag, name, or space with at. Put other lessons in brackets of their own.
