import { readJob } from '@evenhem/job/read'
import { expect, test } from 'vitest'
import { extensions } from '../tools/examples.ts'
import { everyCase, filesOf } from './corpora.ts'

/** A job that holds these bytes where nobody looks: in a part of a plugin that is not here. */
const holding = (bytes: Uint8Array): Uint8Array =>
  Buffer.concat([
    Buffer.from(
      '{"format":"evenhem-job/1","units":"in","job":{"number":"1","name":"n","country":"US"},"rooms":[],"with":{"stranger":{"x":',
    ),
    bytes,
    Buffer.from('}}}'),
  ])
const errorsIn = (bytes: Uint8Array): readonly string[] =>
  readJob(bytes, extensions).diagnostics.flatMap(({ severity, code }) => (severity === 'error' ? [code] : []))

/** Where this format is stricter than JSON: what reading would change in silence. */
const stricter = ['job/name-twice', 'job/surrogate', 'job/number-too-large', 'job/number-not-kept', 'job/minus-zero']

test('JSON that must be read is read, but for what reading would change', () =>
  everyCase('must be read', filesOf('json', 'y_'), ({ name, bytes }) => {
    const errors = errorsIn(holding(bytes)).filter((code) => !stricter.includes(code))
    return errors.length > 0 ? `${name}: ${errors.join(', ')}` : undefined
  }))

test('JSON that must be refused is refused', () =>
  everyCase('must be refused', filesOf('json', 'n_'), ({ name, bytes }) =>
    errorsIn(holding(bytes)).length === 0 ? `${name} was read` : undefined,
  ))

test('JSON that may be read or not is either read or refused with a reason', () =>
  everyCase('either', filesOf('json', 'i_'), ({ name, bytes }) => {
    const { job, diagnostics } = readJob(holding(bytes), extensions)
    return job !== undefined || diagnostics.some(({ severity }) => severity === 'error') ? undefined : `${name}: neither`
  }))

test('none of them alone is taken for a job, and each says why, with a line', () =>
  everyCase('alone', filesOf('json', ''), ({ name, bytes }) => {
    const { job, diagnostics } = readJob(bytes, extensions)
    const reasons = diagnostics.filter(({ severity, line, column }) => severity === 'error' && line >= 1 && column >= 1)
    return job === undefined && reasons.length > 0 ? undefined : name
  }))

test('the cases are there', () => expect(filesOf('json', '').length).toBeGreaterThan(100))
