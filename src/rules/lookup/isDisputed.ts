import type { JsonPointer } from '../../base/index.js'
import type { SheetIndex } from './indexSheet.js'

/** Whether the printed figures of a value disagree, which another finding reports. */
export const isDisputed = ({ disagreements }: SheetIndex, path: JsonPointer): boolean =>
  disagreements.some((disagreement) => disagreement.path === path || disagreement.path.startsWith(`${path}/`))
