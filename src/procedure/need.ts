import type { Severity } from '../base/index.js'
import type { StepContext, StepDraft } from './stepContext.js'

/** Something that must hold before a step is done. */
export interface Need {
  readonly severity: Severity
  readonly holds: (context: StepContext) => boolean
  /** Steps that would have made it hold, in order. */
  readonly remedy: (context: StepContext) => readonly StepDraft[]
  /** Writes it as held, where the steps of `remedy` would change more than that. */
  readonly assume?: (context: StepContext) => void
}
