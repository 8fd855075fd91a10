import { dropUndefined } from '../base/index.js'
import { groupLines, type ProcedureLine } from '../procedure/index.js'
import type { PlannedStep } from './plannedStep.js'

/** Groups planned steps into lines; a step that may be left out is not joined to one that is always done. */
export function planLines(steps: readonly PlannedStep[]): readonly ProcedureLine[] {
  return groupLines(
    steps.map(({ id, do: action, part, onlyIf }) =>
      dropUndefined({
        id,
        do: action,
        on: part?.path,
        instance: part?.instance?.id,
        condition: onlyIf && JSON.stringify(onlyIf),
      }),
    ),
  )
}
