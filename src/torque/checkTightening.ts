import { shown } from '../base/index.js'
import type { Tightening } from '../spec/index.js'
import { checkFigure, checkObject, checkStatedValue } from './checkInput.js'

/** Throws for anything but a tightening of a sheet. Internal. */
export function checkTightening(name: string, tightening: Tightening): void {
  checkObject(name, tightening)
  if (tightening.kind === 'not stated') return
  if (tightening.kind === 'turns') {
    checkFigure(`${name}.min`, tightening.min)
    if (tightening.max !== undefined) checkFigure(`${name}.max`, tightening.max)
    return
  }
  if (tightening.kind !== 'torque')
    throw new TypeError(
      `${name}.kind must be 'torque', 'turns' or 'not stated', got ${shown((tightening as { kind: unknown }).kind)}`,
    )
  checkStatedValue(`${name}.torque`, tightening.torque, 'torque')
  for (const [at, stage] of (tightening.stages ?? []).entries())
    checkStatedValue(`${name}.stages[${at}]`, stage, 'torque')
}
