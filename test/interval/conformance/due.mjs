// The library as an implementation of the due rule: reads questions as JSON Lines, writes a verdict for each.
import { createInterface } from 'node:readline'
import {
  computeDueColumns,
  createDueColumns,
  DUE_STATES,
  writeDueRow,
} from 'drivetrain-service/v1/interval/fleet'

const columns = createDueColumns(1)
for await (const line of createInterface({ input: process.stdin })) {
  const { today, row, ...options } = JSON.parse(line)
  writeDueRow(columns, 0, row)
  console.log(JSON.stringify(DUE_STATES[computeDueColumns(columns, today, options).verdict[0]]))
}
