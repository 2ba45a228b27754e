/** Why a photo is not taken in, by code. */
export const englishPhotoWords = {
  'photo/empty': 'Unexpected file without content, expected a photo; copy it again.',
  'photo/too-big': 'Unexpected size of {size} MB, expected at most {most} MB; send a smaller copy.',
  'photo/format': 'Unexpected content, expected a photo as JPEG, PNG, WebP or HEIC; save it as one of these.',
  'photo/too-many-pixels':
    'Unexpected {pixels} megapixels, expected at most {most}; take it at a lower resolution or send a smaller copy.',
  'photo/damaged':
    'Unexpected damage in the photo or an end before its time, expected a whole one; copy it again or take another.',
  'photo/too-slow':
    'Unexpected photo that is not read after {seconds} seconds, expected one that is; save it anew or take another.',
  'photo/too-much-memory':
    'Unexpected photo that needs more than {most} MB of memory to be read, expected one that needs less; send a smaller copy.',
  'photo/stops-reader':
    'Unexpected photo that stops whatever reads it, expected one that can be read; save it anew or take another.',
  'photo/other-name':
    'Unexpected content, expected the photo of that name; it was damaged or changed, take it from another copy of the folder.',
  'photo/elsewhere': 'Unexpected link to another place, expected the photo itself; put a copy of it there.',
  'photo/unreadable':
    'Unexpected answer of the disk ({code}), expected a file that can be read; take it from another copy of the folder.',
  'photo/other-content':
    'Unexpected content, expected the photo that was announced; something was lost on the way, send it again.',
} as const

export type PhotoCode = keyof typeof englishPhotoWords
