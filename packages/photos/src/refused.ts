import { englishPhotoWords, type PhotoCode } from './words.ts'
import { spanishPhotoWords } from './words-es.ts'

export type { PhotoCode } from './words.ts'

/** Why a photo is not taken in: a code, and what its sentence is filled with. */
export interface Refused {
  readonly code: PhotoCode
  readonly values: Readonly<Record<string, string | number>>
}
export const refusedFor = (code: PhotoCode, values: Refused['values'] = {}): Refused => ({ code, values })

/** The sentences by language and code. */
export const photoWords = { en: englishPhotoWords, es: spanishPhotoWords } as const

const filled = (sentence: string, values: Refused['values']): string =>
  sentence.replaceAll(/\{(\w+)\}/g, (gap, name) => String(values[name] ?? gap))

/** Why, in a sentence of each language. */
export const sayRefused = ({ code, values }: Refused): Readonly<Record<'en' | 'es', string>> => ({
  en: filled(photoWords.en[code], values),
  es: filled(photoWords.es[code], values),
})
