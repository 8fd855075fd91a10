import type { Finding as FindingOver, Result as ResultOver } from '../base/index.js'
import type { AllCodes } from '../message/index.js'

/** A finding of any room: `switch (finding.code)` narrows `params`. `Finding<SpecCodes>` is one of a room alone. */
export type Finding<Codes extends object = AllCodes> = FindingOver<Codes>

/** What reading foreign data gives: a value when nothing is an error, and all findings either way. */
export type Result<T, Codes extends object = AllCodes> = ResultOver<T, Codes>
