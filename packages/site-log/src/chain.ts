import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'

/** SHA-256 of a line without its end, in hexadecimal: what the next line of the same device holds as `before`. Works where browsers have no crypto.subtle. */
export const hashOf = (line: string): string => bytesToHex(sha256(utf8ToBytes(line)))
