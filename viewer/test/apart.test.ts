import { expect, test } from 'vitest'
import { tellingPart } from '../src/data/apart.ts'

test('a name is told from others by the part in which it differs', () => {
  expect(tellingPart('/w/over#hem-left', ['/w/over#hem-right'])).toBe('left')
  expect(tellingPart('/w/panels/left/pin', ['/w/panels/right/pin'])).toBe('left')
  expect(tellingPart('/w/over#hole-left-top-floor', ['/w/over#hole-right-top-floor', '/w/over#hole-left-lower-floor'])).toBe(
    'left top',
  )
})
test('a name alone needs nothing', () => expect(tellingPart('/w/over#hem', [])).toBe(''))
