import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { exampleMachines } from '../support/exampleMachines.js'
import { type JudgedPlan, planRequest } from '../support/planExample.js'
import { readExample } from '../support/readExample.js'

const EXAMPLES = join(import.meta.dirname, '..', '..', 'examples')

/** The visit of every log of every example machine, on the day and at the temperature of the examples. */
export function planExamples(): (readonly [string, JudgedPlan])[] {
  return exampleMachines().flatMap((machine) => {
    const logs = readdirSync(join(EXAMPLES, machine)).filter((file) => /^log.*\.yaml$/.test(file))
    return logs.map((log) => {
      const planned = planRequest({
        sheet: readExample(machine, 'sheet'),
        log: readExample(machine, 'log', log.replace('.yaml', '')),
        toolbox: readExample(machine, 'toolbox'),
        stock: readExample(machine, 'stock'),
        services: 'due',
        today: '2023-10-06',
        ambient: { value: 6, unit: 'degC' },
        due: { soon: { fraction: 0.1 }, staleAfter: { days: 60 }, severity: 'normal' },
        iso6789: '2017',
      })
      if (!planned.ok) throw new Error(`no plan for ${machine}/${log}: ${JSON.stringify(planned.findings)}`)
      return [
        `${machine}/${log.replace('.yaml', '')}`,
        { ...planned.value, findings: planned.findings },
      ] as const
    })
  })
}
