import type { CardPanel, Line, PanelRow } from '../cardParts.js'
import { addLabel, dropEmptyLines, joinLines, writeWords } from '../spans.js'

/** The figures of a row of a panel as lines with their labels, for text without columns. */
export function listRowFigures(
  { tool, toolForm, manual, manualNotes, setting, wrench, notes }: PanelRow,
  columns: CardPanel['columns'],
): readonly Line[] {
  const more = manualNotes.length === 0 ? [] : [...writeWords(' ('), ...manualNotes, ...writeWords(')')]
  return dropEmptyLines([
    addLabel(columns.tool, joinLines([toolForm, tool], ' ')),
    addLabel(columns.manual, [...manual, ...more]),
    addLabel(columns.setting, joinLines([setting, wrench], ', ')),
    ...notes,
  ])
}
