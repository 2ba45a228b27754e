export * from './marks.ts'
