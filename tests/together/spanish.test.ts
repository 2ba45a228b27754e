import { plugins } from '@evenhem/plugins'
import { expect, test } from 'vitest'

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
  const others = /argolla|ménsula|cabecera|cenefa|moldura|puedes/
  expect(pairs.filter(([, , es]) => others.test(`${es?.says} ${es?.help}`)).map(([code]) => code)).toEqual([])
})
