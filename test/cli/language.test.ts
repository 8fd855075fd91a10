import { describe, expect, it } from 'vitest'
import { runCommand } from '../../src/cli/runCommand.js'
import { memoryIo } from '../support/memoryIo.js'

const PLAN = ['plan', 'examples/tind-4', '--today', '2023-10-06', '--ambient', '6degC']

describe('--language', () => {
  it('with en prints what it prints without', async () => {
    const [plain, english] = [memoryIo(), memoryIo()]
    expect(await runCommand(PLAN, plain)).toBe(await runCommand([...PLAN, '--language', 'en'], english))
    expect(english.out).toEqual(plain.out)
    expect(english.out.join('')).toContain('Oil: ')
  })

  it.each(['xx', '__proto__', 'EN', ''])(
    'refuses the unknown language %j and lists the known ones',
    async (name) => {
      const io = memoryIo()
      expect(await runCommand([...PLAN, '--language', name], io)).toBe(2)
      expect(io.err.join('')).toMatch(/^drivetrain-service: --language .*: expected one of .*\ben\b/)
      expect(io.out).toEqual([])
    },
  )
})
