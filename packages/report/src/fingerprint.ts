import { createHash } from 'node:crypto'

// Short plain words that are not easily heard as one another, 256 of them, chosen for this list: a byte each.
const list =
  'acorn alder amber anchor apple apron arch attic autumn bacon badge bamboo barley basil basket beach beaver bell birch biscuit blanket boat bottle bramble brass bread brick bridge broom brush bucket butter button cabin cactus camel candle canoe canvas carrot castle cedar cellar chalk cheese cherry chestnut chimney cider cinder circle clay clover coal cobweb coffee copper coral corner cotton cradle crane cricket crown crystal curtain daisy dancer desert diamond dinner dolphin donkey dragon drum eagle earth easel echo elbow elder elm ember engine evening falcon farmer feather fence fern fiddle field finger flannel flint flute forest fossil fountain fox frost furrow gable galaxy garden garlic gate ginger glacier glove goblet gold goose granite grape gravel guitar hammer harbour harvest hazel hedge helmet heron hickory hill honey hook horse hut icicle indigo iris iron island ivory jacket jasmine jelly jewel juniper kettle kitchen kite knot ladder lagoon lantern larch lavender leather lemon letter lily linen lizard lobster magnet maple marble market meadow melon mill mirror mitten moss mountain mustard napkin needle nettle nickel north nutmeg oak oats ocean olive onion orange orchard orchid otter oven oyster paddle paper parsley pasture peach pebble pencil pepper picnic pigeon pillow planet plum pocket poppy potato prairie pump quarry quartz quill quilt rabbit radish raven ribbon river robin rope rose saddle sail salmon sand satin seven shadow silver sparrow spruce squirrel star stone straw sugar sunset table teapot thimble thistle thunder timber tomato tower trumpet tulip tunnel turnip valley velvet violet violin wagon walnut willow window winter wool yarrow zebra'.split(
    ' ',
  )
export const fingerprintWords: readonly string[] = list

/** A value as JSON with the members of every object by name, so that the order in which they were written says nothing. */
function inOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inOrder)
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([name, member]) => [name, inOrder(member)]),
  )
}

/** What was signed in short. */
export interface Fingerprint {
  /** SHA-256 of the seal, in hexadecimal. */
  readonly hash: string
  /** The hash's first eight bytes, a word each: for people to compare, by telephone too. */
  readonly words: readonly string[]
}

/** The fingerprint of a seal: of its JSON without spaces, the members of every object in the order of their names. */
export function fingerprintOf(seal: unknown): Fingerprint {
  const bytes = createHash('sha256')
    .update(JSON.stringify(inOrder(seal)))
    .digest()
  return { hash: bytes.toString('hex'), words: [...bytes.subarray(0, 8)].map((byte) => list[byte] as string) }
}
