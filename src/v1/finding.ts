import type { Finding as BaseFinding, Result as BaseResult } from '../base/index.js'
import type { AllCodes } from '../message/index.js'

/** A finding with any code: `switch (finding.code)` narrows `params`. `Finding<SpecCodes>` is limited to the codes of documents. */
export type Finding<Codes extends object = AllCodes> = BaseFinding<Codes>

/** The result of reading foreign data: the value if there is no error, and all findings. */
export type Result<T, Codes extends object = AllCodes> = BaseResult<T, Codes>
