import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import type { MachineInput } from './writeEverything.js'

/** The documents of all example machines. */
export function readMachines(): readonly MachineInput[] {
  return readdirSync('examples', { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && existsSync(join('examples', entry.name, 'sheet.yaml')))
    .map(({ name }) => {
      const [sheet, log, toolbox, stock]: readonly unknown[] = ['sheet', 'log', 'toolbox', 'stock'].map(
        (file) => parse(readFileSync(join('examples', name, `${file}.yaml`), 'utf8')),
      )
      return { name, sheet, log, toolbox, stock }
    })
}
