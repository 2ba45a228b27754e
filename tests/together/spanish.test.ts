import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'
import { files, read } from '../architecture/sources.ts'

const pairs = plugins.flatMap(({ words: { en = {}, es = {} } }) =>
  Object.keys(en).map((code) => [code, en[code], es[code]] as const),
)

test('no sentence of a plugin was left in English', () => {
  // A bare number is the same in both.
  const same = pairs.filter(([, en, es]) => en?.says === es?.says && /\p{L}/u.test(en?.says ?? '')).map(([code]) => code)
  expect(same).toEqual(['drapery/obstacle-detector', 'drapery/behind-metal'])
  expect(pairs.filter(([, en, es]) => en?.help !== undefined && en.help === es?.help)).toEqual([])
})

test('one word for one thing: none of these stands beside the word that was chosen', () => {
  const others = /argolla|ménsula|cabecera|cenefa|moldura/
  expect(pairs.filter(([, , es]) => others.test(`${es?.says} ${es?.help}`)).map(([code]) => code)).toEqual([])
})

// Whoever reads is addressed as “usted”. Only forms that are never anything else: what a “tú” is told to do often reads as what somebody does.
const familiar = new RegExp(
  `(?<![\\p{L}'])(?:${[
    'tú|tus?|ti|contigo',
    'puedes|debes|tienes|quieres|haces|ves|vas|estás|eres|sabes|necesitas|anotaste|mediste|hiciste',
    'haz(?:l[oa]s?)?|pon(?:l[oa]s?)?|dil[oa]s?|déjate',
    // Of verbs in -ar, then of the others, with what they are done to.
    '(?:cópi|guárd|tóm|mánd|enví|anót|retír|tóc|revís|márc|ciérr|iníci|déj|quít|cuélg|cámbi|búsc|prueb|pruéb|llév|sác)al[oa]s?',
    '(?:lé|ábr|escríb|míd|píd|vuélv|recóg|elíg|extiénd)el[oa]s?',
  ].join('|')})(?!\\p{L})|(?<=['"\`.;] ?)(?:Toca|Mira|Elige|Anota|Revisa|Extiende|Traslada|Recuerda)(?!\\p{L})`,
  'gu',
)
const familiarIn = (text: string): readonly string[] => text.match(familiar) ?? []

test('whoever reads is “usted” everywhere', () => {
  const sources = files.filter((file) => /\/src\/.*\.ts$/.test(file) && !file.includes('.generated.'))
  expect(sources.flatMap((file) => familiarIn(read(file)).map((form) => `${file}: ${form}`))).toEqual([])
})

test('the other form is seen, and what only looks like it is let pass', () => {
  for (const says of [
    'Qué puedes hacer',
    'cópiala de nuevo',
    '; haz sitio',
    "'Toca otra vez'",
    'hasta que lo anotaste',
    'ciérrala',
  ])
    expect([says, familiarIn(says).length]).toEqual([says, 1])
  for (const says of [
    'cópiela de nuevo',
    'haga sitio',
    'Firma de Ana',
    'la cinta toca el piso',
    'póngala',
    'estas luces',
    'Mide 7',
  ])
    expect([says, familiarIn(says)]).toEqual([says, []])
})
