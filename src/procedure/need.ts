import type { Severity } from '../base/index.js'
import type { Site, StepSeed } from './site.js'

/** Something that must hold before a step is done. */
export interface Need {
  readonly severity: Severity
  readonly holds: (site: Site) => boolean
  /** Steps that would have made it hold, in order. */
  readonly mend: (site: Site) => readonly StepSeed[]
  /** Writes it as held, where the steps of `mend` would change more than that. */
  readonly assume?: (site: Site) => void
}
