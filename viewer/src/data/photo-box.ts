import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex } from '@noble/hashes/utils.js'
import type { Keeper, KeptPhoto } from './keeper.ts'
import type { PhotoServer } from './served.ts'

const chunk = 1024 * 1024
const smallSide = 480

/** A photo as this tablet can show it. */
export interface BoxedPhoto {
  /** Where a small picture of it is; absent where it comes with the server's answer. */
  readonly small: string
  readonly large: string
  /** How much of it the server has, from 0 to 1; absent once it has all. */
  readonly gone?: number
  readonly refused?: Readonly<Record<string, string>>
}

/**
 * The photos of a job: those taken here wait until the server has them, a piece after the other, and go on where they stopped. Tells of `change`.
 * A photo is named by its content, so the same one twice is one.
 */
export class PhotoBox extends EventTarget {
  private readonly job: string
  private readonly keeper: Keeper
  private readonly server: PhotoServer
  private kept = new Map<string, KeptPhoto>()
  private readonly gone = new Map<string, number>()
  private readonly urls = new Map<string, string>()
  private sending: Promise<void> | undefined

  constructor(job: string, keeper: Keeper, server: PhotoServer) {
    super()
    this.job = job
    this.keeper = keeper
    this.server = server
  }
  /** Takes up what is kept: another tab of this tablet may have taken some too. */
  async reread(): Promise<void> {
    this.kept = new Map((await this.keeper.photos(this.job)).map((photo) => [photo.hash, photo]))
    this.dispatchEvent(new Event('change'))
    void this.send()
  }
  close(): void {
    for (const url of this.urls.values()) URL.revokeObjectURL(url)
  }

  /** Keeps a photo, and gives its name. Throws when there is no room. */
  async take(file: Blob): Promise<string> {
    const bytes = await file.arrayBuffer()
    const hash = bytesToHex(sha256(new Uint8Array(bytes)))
    if (this.kept.has(hash)) return hash
    const small = await smallOf(file).catch(() => undefined)
    const photo: KeptPhoto = {
      job: this.job,
      hash,
      size: bytes.byteLength,
      type: file.type,
      sent: false,
      ...(small ? { small } : {}),
    }
    await this.keeper.keepPhoto(photo, bytes)
    this.set(photo)
    this.dispatchEvent(new Event('kept'))
    void this.send()
    return hash
  }
  /** How a photo is shown, taken here or by others. */
  photo(hash: string): BoxedPhoto {
    const kept = this.kept.get(hash)
    const here = kept?.small && this.urlOf(hash, kept.small)
    const large = kept?.sent === false && here ? here : this.server.address(hash, 1600)
    return {
      small: here ?? this.server.address(hash, 320),
      large,
      ...(kept && !kept.sent && !kept.refused ? { gone: this.gone.get(hash) ?? 0 } : {}),
      ...(kept?.refused ? { refused: kept.refused } : {}),
    }
  }
  /** How many photos the server has not. */
  get waiting(): number {
    return this.unsent().length
  }
  private unsent(): readonly KeptPhoto[] {
    return [...this.kept.values()].filter(({ sent, refused }) => !sent && !refused)
  }

  /** Sends what waits; once at a time, however often it is asked for. */
  send(): Promise<void> {
    this.sending ??= this.sendAll().finally(() => {
      this.sending = undefined
    })
    return this.sending
  }
  private async sendAll(): Promise<void> {
    for (let [next] = this.unsent(); next; [next] = this.unsent()) {
      try {
        await this.sendOne(next)
      } catch {
        // It goes on the next time that the server is heard.
        return
      }
    }
  }
  private async sendOne(photo: KeptPhoto): Promise<void> {
    const { hash, size } = photo
    const bytes = await this.keeper.bytesOf(hash)
    let state = await this.server.state(hash)
    while (bytes && !state.done && !state.refused) {
      this.tellGone(hash, state.have / size)
      const from = state.have
      state = await this.server.send(hash, bytes.slice(from, from + chunk), from, size)
      if (state.have === from && !state.done && !state.refused) throw new Error('the server takes no more of it')
    }
    // What was refused stays here, for whoever looks why.
    const next = state.refused ? { ...photo, refused: state.refused.says } : { ...photo, sent: true }
    await this.keeper.keepPhoto(next, state.refused && bytes)
    this.set(next)
  }

  private set(photo: KeptPhoto): void {
    this.kept.set(photo.hash, photo)
    this.gone.delete(photo.hash)
    this.dispatchEvent(new Event('change'))
  }
  private tellGone(hash: string, gone: number): void {
    this.gone.set(hash, gone)
    this.dispatchEvent(new Event('change'))
  }
  private urlOf(hash: string, small: ArrayBuffer): string {
    const url = this.urls.get(hash) ?? URL.createObjectURL(new Blob([small], { type: 'image/jpeg' }))
    this.urls.set(hash, url)
    return url
  }
}

/** A small picture, upright; not every browser reads every kind. */
async function smallOf(file: Blob): Promise<ArrayBuffer> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' })
  const scale = Math.min(1, smallSide / Math.max(bitmap.width, bitmap.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(bitmap.width * scale))
  canvas.height = Math.max(1, Math.round(bitmap.height * scale))
  canvas.getContext('2d')?.drawImage(bitmap, 0, 0, canvas.width, canvas.height)
  bitmap.close()
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', 0.8))
  if (!blob) throw new Error('the picture could not be made small')
  return blob.arrayBuffer()
}
