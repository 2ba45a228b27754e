import { stat } from 'node:fs/promises'

/** How a file looks from outside: its name, times and size. */
export interface Looks {
  readonly text: string
  readonly size: number
  /** It did not change for so long that it cannot have changed since without looking different. */
  readonly areSettled: boolean
}

// A file that changed this short a time ago may change again without looking different: clocks of file systems are coarse.
const settlesAfterMs = 2000

/** Throws what the file system throws. */
export async function looksOf(file: string): Promise<Looks> {
  const { mtimeMs, ctimeMs, size, ino } = await stat(file)
  const areSettled = Date.now() - Math.max(mtimeMs, ctimeMs) > settlesAfterMs
  return { text: `${file} ${ino} ${mtimeMs} ${ctimeMs} ${size}`, size, areSettled }
}

/** Reads files, each again only when it looks different or when its looks say nothing sure. Throws what `stat` and `read` throw. */
export function readKept<T>(read: (file: string, looks: Looks) => Promise<T>): (file: string) => Promise<T> {
  const kept = new Map<string, { readonly looks: Looks; readonly content: T }>()
  return async (file) => {
    const looks = await looksOf(file)
    const before = kept.get(file)
    if (before?.looks.areSettled && before.looks.text === looks.text) return before.content
    const content = await read(file, looks)
    kept.set(file, { looks, content })
    return content
  }
}
