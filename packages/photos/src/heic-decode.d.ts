declare module 'heic-decode' {
  /** A picture of a file, not decoded yet. */
  interface Picture {
    readonly width: number
    readonly height: number
    readonly decode: () => Promise<{ readonly width: number; readonly height: number; readonly data: Uint8ClampedArray }>
  }
  const heic: {
    /** Every picture of a file, the first one being the one to show. Throws an Error for what is no such file. */
    readonly all: (given: { readonly buffer: Uint8Array }) => Promise<readonly Picture[] & { readonly dispose: () => void }>
  }
  export default heic
}
