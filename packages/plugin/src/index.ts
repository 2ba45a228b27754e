export * from './collected.ts'
export * from './contract.ts'
export * from './message.ts'
