export * from './lay.ts'
export * from './places.ts'
export type * from './types.generated.ts'
export * from './windows.ts'
