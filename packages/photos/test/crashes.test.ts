import { expect, test } from 'vitest'
import { crashesOfTakingIn, failuresOfTakingIn } from './crashes.ts'

test('wherever taking in is cut off, a photo is there whole or not at all, confirmed pieces are there, and sending it again ends well', async () => {
  expect(await crashesOfTakingIn(['kill', 'nothing', 1], 'pieces')).toBeGreaterThan(250)
  expect(await crashesOfTakingIn(['nothing'], 'whole')).toBeGreaterThan(80)
})
test.each(['EIO', 'ENOSPC'])('a call that fails once with %s costs one photo’s work', async (code) => {
  expect(await failuresOfTakingIn(code)).toBeGreaterThan(60)
})
