import { expect, test } from 'vitest'
import { parseSpecSheet } from '../../../src/schema/index.js'
import type { SpecSheet } from '../../../src/spec/specSheet.js'
import type { SpecSheetInput } from '../../../src/spec/specSheetInput.js'

const input = {
  kind: 'spec-sheet',
  version: '1.0',
  id: 'ferd-2',
  revision: '1',
  source: 'p. 3',
  machine: {
    make: 'Nordli',
    model: 'Ferd 2',
    type: 'utility machine',
    mass: '640 kg',
    variants: { short: 'Ferd 2 S, when market NO', long: { when: 'market SE' } },
    axles: { rear: '2 wheels' },
  },
  sources: { manual: 'Ferd 2 manual' },
  gearcases: {
    rear: {
      type: 'hub reduction',
      instances: ['left', 'right'],
      yellowMetal: true,
      oilSpace: {
        oils: 'SAE 90',
        fill: { drainAndRefill: '300 mL', per: 'instance', method: { kind: 'to level hole' } },
      },
      openings: {
        drain: '25 N·m',
        fill: {
          uses: 'fill, level',
          drive: { kind: 'hand' },
          seals: 'none',
          tightening: { kind: 'not stated', threadCondition: 'dry' },
        },
      },
      breather: 'top of the housing',
    },
    front: { type: 'gearbox', oilSpace: 'shared with rear' },
  },
  services: {
    change: { gearcases: ['rear'], intervals: { repeat: '200 h', severe: 'factor 0.5 when towing' } },
  },
  overrides: [{ when: 'variant long', set: { '/machine/mass': '650 kg' } }],
} as const satisfies SpecSheetInput

test('what the type allows is read', () => {
  expect(parseSpecSheet(input).findings).toEqual([])
})

test('every full sheet is one, and what reading refuses is not', () => {
  const fullSheet = (sheet: SpecSheet): SpecSheetInput => sheet
  expect(fullSheet).toBeInstanceOf(Function)
  // @ts-expect-error: the machine is required
  const noMachine: SpecSheetInput = { kind: 'spec-sheet', version: '1.0', id: 'a', revision: '1' }
  // @ts-expect-error: a gearcase is never one text
  const text: SpecSheetInput = { ...input, gearcases: { rear: 'gearbox' } }
  // @ts-expect-error: only sections have a source
  const source: SpecSheetInput = { ...input, machine: { ...input.machine, source: 'p. 3' } }
  for (const wrongInput of [noMachine, text, source]) expect(parseSpecSheet(wrongInput).ok).toBe(false)
})
