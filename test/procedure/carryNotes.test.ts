import { describe, expect, it } from 'vitest'
import { carryNotes } from '../../src/procedure/carryNotes.js'
import type { ProcedureDocument, Step } from '../../src/v1/spec.js'

const FILL = '/gearcases/front/openings/fill'
const document = (...steps: readonly Step[]): ProcedureDocument => ({
  kind: 'procedure',
  version: '1.0',
  id: 'p',
  name: 'P',
  sheet: { id: 'example', revision: '1' },
  identity: {},
  services: [],
  steps,
})
const notesOf = ({ procedure }: ReturnType<typeof carryNotes>) =>
  procedure.steps.map(({ id, note }) => [id, note])

describe('carryNotes', () => {
  it('finds a step by what it does and on what, whatever its id and its figures', () => {
    const old = document({ id: 'mine', do: 'tighten', on: FILL, note: 'With the short extension.' })
    const fresh = document(
      { id: 'front-clean-fill', do: 'clean around', on: FILL },
      { id: 'front-tighten-fill', do: 'tighten', on: FILL, values: { tightening: `${FILL}/tightening` } },
    )
    const carried = carryNotes(old, fresh)
    expect(notesOf(carried)).toEqual([
      ['front-clean-fill', undefined],
      ['front-tighten-fill', 'With the short extension.'],
    ])
    expect(carried.lost).toEqual([])
    expect(carried.procedure.steps[1]?.values).toEqual({ tightening: `${FILL}/tightening` })
  })

  it('keeps the second of two equal steps the second, and the sides apart', () => {
    const crack = (id: string, instance: string, note?: string): Step => ({
      id,
      do: 'crack loose',
      on: FILL,
      at: { instance },
      ...(note !== undefined && { note }),
    })
    const old = document(
      crack('a', 'left'),
      crack('b', 'left', 'Again, after the run.'),
      crack('c', 'right', 'Tight.'),
    )
    const fresh = document(crack('x', 'right'), crack('y', 'left'), crack('z', 'left'))
    expect(notesOf(carryNotes(old, fresh))).toEqual([
      ['x', 'Tight.'],
      ['y', undefined],
      ['z', 'Again, after the run.'],
    ])
  })

  it('reports a note whose step is gone, and puts a note of the sheet first', () => {
    const old = document(
      { id: 'roll', do: 'roll the machine', on: FILL, note: 'Two people.' },
      { id: 'read', do: 'read the manual', note: 'It is in the cab.' },
    )
    const fresh = document({ id: 'read', do: 'read the manual', note: 'Page 31.' })
    const carried = carryNotes(old, fresh)
    expect(carried.lost).toEqual([{ id: 'roll', note: 'Two people.' }])
    expect(notesOf(carried)).toEqual([['read', 'Page 31. It is in the cab.']])
    // A second time nothing is added.
    expect(notesOf(carryNotes(carried.procedure, fresh))).toEqual([['read', 'Page 31. It is in the cab.']])
  })
})
