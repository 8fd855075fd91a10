import { describe, expect, it } from 'vitest'
import { en } from '../../src/message/en/index.js'
import { renderMessage } from '../../src/message/renderMessage.js'
import type { Toolbox } from '../../src/v1/spec.js'
import { planExample } from '../support/planExample.js'

const HUB = '/gearcases/hub/openings/plug'

describe('a socket whose square is not the wrench’s', () => {
  it('is reached through the adaptor, which is listed to be laid ready', () => {
    const plan = planExample('acre-26')
    const adaptors = plan.tools.filter(({ kind }) => kind === 'adaptor')
    expect(adaptors).toMatchObject([
      { have: { id: 'half-to-three-eighths' }, verdict: 'fits', for: [{ path: HUB }] },
    ])
    expect(adaptors[0]?.reasons).toEqual([
      {
        code: 'service/adaptor-between',
        params: { adaptor: '1/2 to 3/8 in drive adaptor', wrenches: ['half-inch click wrench'] },
      },
    ])
    const [reason] = adaptors[0]?.reasons ?? []
    expect(reason && renderMessage(reason, en)).toBe(
      '1/2 to 3/8 in drive adaptor: between the socket and the half-inch click wrench. It is in line, so the setting does not change.',
    )
  })

  it('without the adaptor is a torque that no wrench covers', () => {
    const toolbox = ({ adaptors: _, ...rest }: Toolbox): Toolbox => rest
    const plan = planExample('acre-26', { toolbox })
    expect(plan.tightenings.find(({ part }) => part.path === HUB)?.verdict).toBe('does not fit')
    expect(plan.tools.filter(({ kind }) => kind === 'adaptor')).toEqual([])
    expect(plan.findings.map(({ code }) => code)).toEqual(['service/no-wrench-fits'])
  })
})
