export type * from './types.generated.ts'
export * from './places.ts'
export * from './lay.ts'
export * from './windows.ts'
