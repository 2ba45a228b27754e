import { test } from 'vitest'
import { isLong } from './long.ts'

/** A test that runs in the long tests only, of which CI runs a slice. */
export const later: (name: string, run: () => Promise<void>) => void = isLong ? test : () => undefined
