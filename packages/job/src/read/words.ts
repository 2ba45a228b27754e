/**
 * What is said, in English, about a job file: by code, in ICU message form, filled with a diagnostic's `values`. `help` says why, or what
 * else may be meant. Lengths that can't be read have their sentences in `lengthWords` of the length package.
 */
export const jobWords = {
  // The bytes.
  'job/utf-8': {
    says: 'Unexpected byte {byte} at byte {number}, expected UTF-8; save the file as UTF-8.',
    help: 'Nothing behind it was read: a guess would change names and addresses.',
  },
  'job/utf-16': { says: 'Unexpected UTF-16, expected UTF-8; save the file as UTF-8.' },
  'job/byte-order-mark': {
    says: 'Unexpected byte order mark, expected the text to begin; nothing needs doing, it is read over.',
    help: 'Some editors write it. Saving as UTF-8 without it takes it out.',
  },

  // The syntax.
  'job/empty': { says: 'Unexpected empty file, expected a job; write one, beginning with an opening brace.' },
  'job/too-deep': {
    says: 'Unexpected bracket {most} levels deep, expected fewer; take the nesting apart.',
    help: 'Behind it nothing was read.',
  },
  'job/comment': {
    says: 'Unexpected comment, expected JSON without comments; take it out.',
    help: 'A “note” under “job” is shown to whoever opens the job.',
  },
  'job/space': {
    says: 'Unexpected space {got}, expected a plain space; write one.',
    help: 'Such spaces come along when text is copied from a page or a letter.',
  },
  'job/trailing-comma': { says: 'Unexpected comma before {closes}, expected no comma after the last; take it out.' },
  'job/extra-comma': { says: 'Unexpected comma, expected something before it; take it out.' },
  'job/missing-comma': { says: 'Unexpected end of this without a comma, expected one before what follows; put a comma here.' },
  'job/missing-colon': { says: 'Unexpected name without a colon, expected a colon and a value; write a colon here.' },
  'job/missing-name': { says: 'Unexpected {got}, expected a name in double quotes; write the name and a colon before it.' },
  'job/missing-value': { says: 'Unexpected {got}, expected a value; write one, or take the name out.' },
  'job/ends-early': { says: 'Unexpected end of the file, expected a value; write the rest.' },
  'job/unclosed': {
    says: 'Unexpected {got}, expected {closes} for the {opens} on line {otherLine}, column {otherColumn}; close that first.',
  },
  'job/unclosed-at-end': {
    says: 'Unexpected end of the file, expected {closes} for the {opens} on line {otherLine}, column {otherColumn}; close it.',
  },
  'job/unexpected': { says: 'Unexpected {got}, expected {expected}; look at the brackets around it.' },
  'job/stray': { says: 'Unexpected {got}, expected a value; take it out.' },
  'job/after-end': { says: 'Unexpected {got} after the job, expected the end of the file; take out what follows.' },
  'job/quotes': {
    says: 'Unexpected {got}, expected straight double quotes; write {meant}.',
    help: 'Word processors turn quotes into curly ones.',
  },
  'job/open-text': {
    says: 'Unexpected end of the line inside quotes, expected the closing quote; write it where the text ends.',
    help: 'Text stays on one line; \\n in it stands for a new line.',
  },
  'job/control-character': {
    says: 'Unexpected control character {got} inside quotes, expected it written out; take it out, or write \\t for a tab.',
  },
  'job/escape': {
    says: 'Unexpected {got} inside quotes, expected a known escape; write \\\\ for a backslash itself.',
    help: 'Known are \\" \\\\ \\/ \\b \\f \\n \\r \\t and \\u with four digits.',
  },
  'job/bare-name': { says: 'Unexpected {got} without quotes, expected a name in double quotes; write {meant}.' },
  'job/bare-word': { says: 'Unexpected {got} without quotes, expected a value; write {meant} if it is text.' },
  'job/word-near': { says: 'Unexpected {got}, expected a value; write {meant}.' },
  'job/bare-length': {
    says: 'Unexpected {got} without quotes, expected a plain number; write {meant}.',
    help: 'A fraction or a unit makes it text, and text stands in quotes.',
  },
  'job/number-form': { says: 'Unexpected {got}, expected a number as JSON writes it; write {meant}.' },
  'job/no-number': { says: 'Unexpected {got}, expected a number; write it in digits, or put it in quotes if it is text.' },

  // What reading would change in silence.
  'job/name-twice': {
    says: 'Unexpected second “{name}”, expected each name once; the first is on line {otherLine}, column {otherColumn}, keep the one that holds.',
  },
  'job/surrogate': {
    says: 'Unexpected half of a character, {got}, expected both halves or neither; write the character itself.',
  },
  'job/number-too-large': { says: 'Unexpected {got}, expected a number that a computer can hold; look at its digits.' },
  'job/number-not-kept': {
    says: 'Unexpected {got}, expected no more digits than are kept; it would be read as {kept}, write that if it is meant.',
  },
  'job/minus-zero': { says: 'Unexpected {got}, expected 0 without a sign; write 0.' },
  'job/length-rounded': {
    says: 'Unexpected {got}, expected a length that ends; nothing needs doing, it is rounded to the nanometre.',
  },

  // The schema.
  'job/no-object': { says: 'Unexpected {got}, expected a job between braces; begin with an opening brace.' },
  'job/newer-format': { says: 'Unexpected format {got}, expected evenhem-job/1; open this job with a newer Evenhem.' },
  'job/no-catalogue': { says: 'Unexpected {got}, expected a catalogue between braces; begin with an opening brace.' },
  'job/newer-catalogue': {
    says: 'Unexpected format {got}, expected evenhem-catalogue/1; open this catalogue with a newer Evenhem.',
  },
  'job/missing': { says: 'Unexpected gap, expected “{name}” here; write it.', help: '{what}' },
  'job/missing-plain': { says: 'Unexpected gap, expected “{name}” here; write it.' },
  'job/unknown-member': {
    says: 'Unexpected “{name}”, expected one of {members}; take it out.',
    help: 'What a plugin adds stands under “with”.',
  },
  'job/unknown-member-near': {
    says: 'Unexpected “{name}”, expected “{near}”; write that if it is meant.',
    help: 'Known here: {members}.',
  },
  'job/no-members': { says: 'Unexpected “{name}”, expected nothing here; take it out.' },
  'job/type': { says: 'Unexpected {got}, expected one of these types: {expected}; write that.' },
  'job/type-text': { says: 'Unexpected {got}, expected text; write it in double quotes.' },
  'job/type-number': { says: 'Unexpected {got}, expected a number; write it in digits and without quotes.' },
  'job/type-whole-number': { says: 'Unexpected {got}, expected a whole number; write it in digits and without quotes.' },
  'job/type-truth': { says: 'Unexpected {got}, expected true or false; write one of them without quotes.' },
  'job/type-object': { says: 'Unexpected {got}, expected members between braces; write it so.' },
  'job/type-list': { says: 'Unexpected {got}, expected a list between square brackets; put it in square brackets.' },
  'job/type-length': { says: 'Unexpected {got}, expected a length; write it like "86 1/2" or 86.5.' },
  'job/choice': { says: 'Unexpected {got}, expected one of {allowed}; write one of them.' },
  'job/choice-near': { says: 'Unexpected {got}, expected {near}; write that if it is meant.', help: 'Known here: {allowed}.' },
  'job/id': { says: 'Unexpected {got}, expected an id of small letters, digits and hyphens; write one.' },
  'job/id-near': {
    says: 'Unexpected {got}, expected an id of small letters, digits and hyphens; write {meant}.',
    help: 'At most 40 of them, beginning with a letter or a digit. People see the “name”, not the id.',
  },
  'job/pattern': { says: 'Unexpected {got}, expected another form; write it so: {what}', help: 'The form is {pattern}' },
  'job/date': { says: 'Unexpected {got}, expected a day of the calendar; write it like "2026-11-30".' },
  'job/date-time': {
    says: 'Unexpected {got}, expected a day, a time and its offset; write it like "2026-11-30T09:12:00-05:00".',
  },
  'job/empty-text': { says: 'Unexpected empty text, expected something; write it, or take the name out.' },
  'job/text-too-short': { says: 'Unexpected {got}, expected at least {limit} characters; write more.' },
  'job/text-too-long': { says: 'Unexpected {got}, expected at most {limit} characters; write less.' },
  'job/too-small': { says: 'Unexpected {got}, expected {limit} or more; look at the number.' },
  'job/too-small-or-equal': { says: 'Unexpected {got}, expected more than {limit}; look at the number.' },
  'job/too-large': { says: 'Unexpected {got}, expected {limit} or less; look at the number.' },
  'job/too-large-or-equal': { says: 'Unexpected {got}, expected less than {limit}; look at the number.' },
  'job/step': { says: 'Unexpected {got}, expected a multiple of {step}; look at the number.' },
  'job/too-few': { says: 'Unexpected number of items, {got}, expected at least {limit}; add what is missing.' },
  'job/too-many': { says: 'Unexpected number of items, {got}, expected at most {limit}; this version takes no more here.' },
  'job/refused': { says: 'Unexpected {got}, expected what the schema asks for with “{keyword}”: {message}; look at the schema.' },

  // Lengths and names.
  'job/absurd-length': { says: 'Unexpected {got} ({is}), expected {least} to {most}; look at the number and its unit.' },
  'job/absurd-length-unit': {
    says: 'Unexpected {got} ({is}), expected {least} to {most}; is {guess} meant? Then write the unit.',
  },
  'job/absurd-length-units': {
    says: 'Unexpected {got} ({is}), expected {least} to {most}; which is meant: {guess}? Write the unit.',
  },
  'job/id-twice': {
    says: 'Unexpected second “{id}”, expected each id once in its list; the first is on line {otherLine}, column {otherColumn}, give one of them another id.',
  },
  'job/names-nothing': { says: 'Unexpected “{id}”, expected an id under “{list}”: {ids}; write one of these, or add the entry.' },
  'job/names-nothing-near': {
    says: 'Unexpected “{id}”, expected an id under “{list}”; write “{near}” if that is meant.',
    help: 'Known here: {ids}.',
  },
  'job/names-nothing-at-all': { says: 'Unexpected “{id}”, expected an id under “{list}”, where there is none; add the entry.' },

  // Plugins.
  'job/unknown-kind': {
    says: 'Unexpected kind “{kind}”, expected one that is known here; nothing needs doing, it is kept as it is and not checked.',
  },
  'job/unknown-kind-near': {
    says: 'Unexpected kind “{kind}”, expected one that is known here; write “{near}” if that is meant.',
    help: 'It is kept as it is and not checked.',
  },
  'job/unknown-part': {
    says: 'Unexpected part of “{plugin}”, expected a plugin that is known here; nothing needs doing, it is kept as it is and not checked.',
  },
  'job/unknown-part-near': {
    says: 'Unexpected part of “{plugin}”, expected a plugin that is known here; write “{near}” if that is meant.',
    help: 'It is kept as it is and not checked.',
  },
  'job/unknown-plugin': {
    says: 'Unexpected plugin “{plugin}”, expected one that is known here; nothing needs doing, nothing of it is used.',
  },
  'job/newer-plugin': {
    says: 'Unexpected version {version} of “{plugin}”, expected {ours} or less; a newer Evenhem can check it, here it is kept as it is.',
  },
  'job/part-not-here': {
    says: 'Unexpected part of “{plugin}” on a {level}, expected none there; take it out, or put it where it belongs.',
    help: 'Its plugin adds nothing at this level, or not to this kind of hardware. It is not checked and nobody reads it.',
  },
  'job/uses-lacks': {
    says: 'Unexpected part of “{plugin}”, expected it under “uses” too; add {write}.',
    help: 'So that a newer Evenhem knows which version was written.',
  },
  'job/no-uses': {
    says: 'Unexpected part of “{plugin}”, expected “uses” to name it; add “uses” with {write}.',
    help: 'So that a newer Evenhem knows which version was written.',
  },
  'job/upgraded': {
    says: 'Unexpected older version of “{plugin}”, expected {to}; nothing needs doing, it is read as {to}: {because}',
  },
  'job/upgrade-failed': {
    says: 'Unexpected older version of “{plugin}”, expected {to}; it could not be brought up to it: {thrown}',
    help: 'The step was: {because}',
  },

  // Readings.
  'job/reading-no-place': {
    says: 'Unexpected “{place}”, expected a place, beginning with a slash; write it like /rooms/den/windows/w1/…',
  },
  'job/reading-nowhere': {
    says: 'Unexpected “{name}” in this place, expected one of {names}; write one of these.',
    help: 'The reading is left out.',
  },
  'job/reading-nowhere-near': {
    says: 'Unexpected “{name}” in this place, expected “{near}”; write that if it is meant.',
    help: 'The reading is left out. Known here: {names}.',
  },
  'job/reading-unknown': {
    says: 'Unexpected “{name}” in this place, expected one of {names}; write one of these.',
    help: 'The reading is left out.',
  },
  'job/reading-unknown-near': {
    says: 'Unexpected “{name}” in this place, expected “{near}”; write that if it is meant.',
    help: 'The reading is left out. Known here: {names}.',
  },
  'job/reading-of-much': {
    says: 'Unexpected reading of a whole item, expected the place of one value; write a reading for each.',
    help: 'The reading is left out.',
  },
  'job/reading-kept': {
    says: 'Unexpected reading of a part of “{plugin}”, expected a plugin that is known here in this version; nothing needs doing, it is kept and not used.',
  },

  'job/catalogue-path': {
    says: 'Unexpected path “{got}”, expected a .json file in the folder of this job or in the one that holds it, such as “../catalogue.json”; move the file there.',
  },
  'job/catalogue-missing': {
    says: 'Unexpected gap, expected a catalogue in “{got}”; put the file there, or take its entries into the job.',
  },
  'job/catalogue-outside': {
    says: 'Unexpected link “{got}” to a file elsewhere, expected a .json file that really lies in the folder of this job or in the one that holds it; copy the file there.',
  },
  'job/catalogue-no-file': {
    says: 'Unexpected folder, pipe or device at “{got}”, expected a file; put the catalogue there.',
  },
  'job/catalogue-too-large': {
    says: 'Unexpected {size} MB in “{got}”, expected a catalogue of {most} MB or less; make several of it.',
  },
  'job/catalogue-unreadable': {
    says: 'Unexpected answer {error} of the system for “{got}”, expected a file that can be read; look where it leads and who may read it.',
  },
  'job/catalogue-broken': {
    says: 'Unexpected mistakes in “{got}”, {count} of them, expected a catalogue without any; run check on that file and put them right.',
  },
  'job/catalogue-chain': {
    says: 'Unexpected “from” in a catalogue, expected entries with all their members; write them here, since a catalogue takes nothing from another.',
  },
  'job/catalogue-unknown': {
    says: 'Unexpected “{got}”, expected one of the catalogues of this job: {names}; write one of them, or add it under “catalogues”.',
  },
  'job/catalogue-unknown-near': {
    says: 'Unexpected “{got}”, expected “{near}”; write that if it is meant.',
    help: 'Catalogues of this job: {names}.',
  },
  'job/catalogue-item': {
    says: 'Unexpected “{got}”, expected one of what the catalogue holds: {names}; write one of them.',
  },
  'job/catalogue-item-near': {
    says: 'Unexpected “{got}”, expected “{near}”; write that if it is meant.',
    help: 'The catalogue holds: {names}.',
  },
  'job/catalogue-kind': {
    says: 'Unexpected kind {got}, expected {expected}, which “{item}” is in the catalogue; write that, or take another item.',
  },
  'job/catalogue-changed': {
    says: 'Unexpected {got} in this frozen copy, expected {now}, which the catalogue says now; take the new value, or leave it: the copy wins.',
  },

  'job/more': { says: 'Unexpected number of findings, expected no more than {most}; put these right and look again.' },
} as const satisfies Readonly<Record<string, { readonly says: string; readonly help?: string }>>

/** A code that `jobWords` has a sentence for. */
export type JobCode = keyof typeof jobWords
