export type * from './types.generated.ts'
export * from './places.ts'
