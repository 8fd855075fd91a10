import { planVisit } from '../../../src/v1/service.js'
import type { Documents, Gearcase, Machine, Service, SpecSheet, Stock } from '../../../src/v1/spec.js'
import { value } from './notation.js'
import { SERVICE_VAN } from './serviceVan.js'

const HEADER = 'Invented test data. Maker, model and every figure are made up: not for use on a real machine.'

/** The oil in stock, as `['name', label, '1 L', 6]`. */
type Shelf = readonly (readonly [string, object, string, number])[]

interface Written {
  readonly machine: Pick<Machine, 'make' | 'model' | 'type'> & Partial<Machine>
  readonly gearcases: Readonly<Record<string, Gearcase>>
  readonly shields?: NonNullable<SpecSheet['shields']>
  readonly services: Readonly<Record<string, Service>>
  readonly oil: Shelf
}

export interface GoodMachine {
  readonly sheet: SpecSheet
  readonly log: Documents['machine-log']
  readonly toolbox: Documents['toolbox']
  readonly stock: Stock
}

/** The sheet with a log that makes its changes due, the service van, and a stock with every seal of the sheet. */
export function goodMachine({ machine, oil, ...rest }: Written): GoodMachine {
  const id = `${machine.make} ${machine.model}`.toLowerCase().replaceAll(' ', '-')
  const head = { version: '1.0', header: HEADER } as const
  const sheet: SpecSheet = {
    ...head,
    kind: 'spec-sheet',
    id,
    revision: '2022-01',
    machine: { variants: { only: { name: machine.model } }, axles: {}, supports: {}, ...machine },
    sources: {
      manual: { title: `${machine.model} service manual`, document: 'workshop manual', date: '2021-09-01' },
    },
    ...rest,
  }
  const readings = [
    { date: '2022-03-01', value: 1 },
    { date: '2023-10-04', value: 640 },
  ]
  const log = {
    ...head,
    kind: 'machine-log',
    id: `${id}-1`,
    name: machine.model,
    sheet: { id, revision: '2022-01' },
    identity: { variant: 'only' },
    commissioned: '2022-03-01',
    meters: { hours: { unit: 'h', readings } },
    records: [],
  } as const
  const seals = [...Object.values(sheet.gearcases)].flatMap(({ openings, covers = {}, filters = {} }) => [
    ...Object.values(openings).flatMap((opening) => opening.seals),
    ...Object.values(covers).map((cover) => cover.seal),
    ...Object.values(filters).flatMap((filter) => filter.seals),
  ])
  const onShelf = seals.filter(({ kind }) => kind !== 'none' && kind !== 'not stated')
  const stock: Stock = {
    ...head,
    kind: 'stock',
    id: 'van-shelf',
    name: 'Van shelf',
    containers: Object.fromEntries(
      oil.map(([name, label, size, count], place) => {
        const { value: figure, unit } = value<{ value: string; unit: 'L' }>(size)
        return [
          `container-${place}`,
          { name, oil: { name, ...label }, size: { value: Number(figure), unit }, count },
        ]
      }),
    ),
    seals: Object.fromEntries(
      onShelf.map((seal, place) => [`seal-${place}`, { name: `${seal.kind} ${place}`, seal, count: 8 }]),
    ),
  }
  return { sheet, log, toolbox: SERVICE_VAN, stock }
}

/** The day of every visit. */
export const TODAY = '2023-10-06'

/** The plan of a visit to one of them, with its findings. */
export function planOf({ sheet, log, toolbox, stock }: GoodMachine) {
  const due = { soon: {}, staleAfter: { days: 30 }, severity: 'normal' } as const
  const ambient = { value: 12, unit: 'degC' } as const
  const planned = planVisit(
    { sheet, log, toolbox, stock, today: TODAY, ambient },
    { services: 'due', due, iso6789: '2017' },
  )
  if (!planned.ok) throw new Error(JSON.stringify(planned.findings))
  return planned
}
