import { expect, test } from 'vitest'
import { parseMachineLog, parseServiceRecord, parseStock, parseToolbox } from '../../../src/schema/index.js'
import type {
  MachineLogInput,
  ServiceRecordInput,
  StockInput,
  ToolboxInput,
} from '../../../src/spec/documentInputs.js'
import type { MachineLog } from '../../../src/spec/machineLog.js'
import type { ServiceRecord } from '../../../src/spec/serviceRecord.js'
import type { Stock } from '../../../src/spec/stock.js'
import type { Toolbox } from '../../../src/spec/toolbox.js'

const record = {
  kind: 'service-record',
  version: '1.0',
  id: 'r',
  machine: 'van',
  sheet: 'ferd-2, revision 1',
  date: '2023-10-06',
  readings: { hours: '512.6 h' },
  entries: [
    'oil-change of front',
    {
      service: 'oil-change',
      gearcase: 'rear',
      drained: 'not judged',
      oil: 'gear oil from quart',
      tightened: { '/gearcases/rear/openings/drain': '1.25 turns' },
    },
  ],
} as const satisfies ServiceRecordInput

const log = {
  kind: 'machine-log',
  version: '1.0',
  id: 'van',
  sheet: 'ferd-2, revision 1',
  meters: ['301.4 h on 2022-11-20', '512.6 h, 4410 km on 2023-10-06'],
  events: ['submersion on 2023-05-02', { kind: 'meter rollover', date: '2023-05-02', meter: 'hours' }],
  records: [
    { ...record, usedOilLog: ['1.2 L to the tank'] },
    { date: '2022-11-20', readings: '301.4 h', entries: 'oil-change of rear' },
  ],
  topUps: ['50 mL in rear on 2023-05-02, gear oil'],
  pauses: ['2022-11-01 to 2023-03-31'],
} as const satisfies MachineLogInput

const toolbox = {
  kind: 'toolbox',
  version: '1.0',
  id: 'van',
  wrenches: {
    small: '40–200 lbf·in by 1, click, 1/4 in',
    large: { type: 'click', drive: '1/2 in', scales: '20–110 N·m by 1', leverLength: '420 mm' },
  },
  sockets: { hex8: 'internal hex 8 mm, 3/8 in' },
  vessels: { jug: '700 mL by 10' },
  pans: { pan: '6 L' },
  fillers: {
    hose: {
      funnel: { shape: 'cone', diameter: '150 mm', depth: '120 mm' },
      hose: { length: '1.5 m', drop: '1.2 m' },
    },
  },
  stands: { pair: '2 x 1000 kg' },
  jacks: { trolley: '2000 kg' },
} as const satisfies ToolboxInput

const stock = {
  kind: 'stock',
  version: '1.0',
  id: 'shelf',
  containers: {
    can: '5 US qt of 80W-90 GL-5',
    bottle: {
      oil: { name: 'gear oil', kv40: '135 mm²/s', pourPoint: '-27 °C' },
      size: '1 L',
      count: 2,
      price: '9.5 EUR',
    },
  },
  seals: {
    washer: '3 x flat copper crush washer 14 x 18 x 1.5 mm',
    ring: { seal: 'NBR o-ring P22', count: 1 },
  },
} as const satisfies StockInput

test('what the types allow is read', () => {
  expect(parseServiceRecord(record).findings).toEqual([])
  expect(parseMachineLog(log).findings).toEqual([])
  expect(parseToolbox(toolbox).findings).toEqual([])
  expect(parseStock(stock).findings).toEqual([])
})

test('every full document is one, and what reading refuses is not', () => {
  const fullDocuments: readonly unknown[] = [
    (given: ServiceRecord): ServiceRecordInput => given,
    (given: MachineLog): MachineLogInput => given,
    (given: Toolbox): ToolboxInput => given,
    (given: Stock): StockInput => given,
  ]
  expect(fullDocuments).toHaveLength(4)
  // @ts-expect-error: a record needs the readings
  const noReadings: ServiceRecordInput = {
    kind: 'service-record',
    version: '1.0',
    id: 'r',
    machine: 'van',
    sheet: 'a, revision 1',
    date: '2023-10-06',
    entries: [],
  }
  // @ts-expect-error: a filler is never one text
  const filler: ToolboxInput = { ...toolbox, fillers: { hose: '1.5 m' } }
  // @ts-expect-error: a label names its oil
  const label: StockInput = { ...stock, containers: { can: { oil: {}, size: '1 L', count: 1 } } }
  expect(parseServiceRecord(noReadings).ok).toBe(false)
  expect(parseToolbox(filler).ok).toBe(false)
  expect(parseStock(label).ok).toBe(false)
})
