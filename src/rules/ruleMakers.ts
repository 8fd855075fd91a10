import type { Severity } from '../base/index.js'
import type { DocumentCodes } from './codes.js'
import type { Rule, RuleFinding, RuleInput, RuleParams, SubjectKind } from './rule.js'

/** Makes rules about one or more kinds of document. */
export const documentRule =
  <Kind extends SubjectKind>(...about: readonly Kind[]) =>
  <Code extends keyof DocumentCodes>(
    code: Code,
    severity: Severity,
    check: Rule<Kind, Code>['check'],
  ): Rule<Kind, Code> => ({ code, severity, about, check })

/** Makes rules that judge each item of a list. */
const itemRule =
  <Kind extends SubjectKind, Item>(about: Kind, list: (input: RuleInput<Kind>) => readonly Item[]) =>
  <Code extends keyof DocumentCodes>(
    code: Code,
    severity: Severity,
    checkItem: (
      item: Item,
      input: RuleInput<Kind>,
    ) => RuleFinding<RuleParams<Code>> | readonly RuleFinding<RuleParams<Code>>[],
  ): Rule<Kind, Code> => ({
    code,
    severity,
    about,
    check: (input) => list(input).flatMap((item) => checkItem(item, input)),
  })

const sheetItemRule = <Item>(list: (input: RuleInput<'spec-sheet'>) => readonly Item[]) =>
  itemRule('spec-sheet', list)

export const sheetRule = documentRule('spec-sheet')
export const logRule = documentRule('machine-log')
export const toolboxRule = documentRule('toolbox')
export const recordRule = documentRule('service-record')

// Lists of a sheet; see `SheetIndex`.
export const conditionRule = sheetItemRule(({ sheet }) => sheet.conditions)
export const disagreementRule = sheetItemRule(({ sheet }) => sheet.disagreements)
export const figureRule = sheetItemRule(({ sheet }) => sheet.figures)
export const gearcaseRule = sheetItemRule(({ document }) => Object.entries(document.gearcases))
export const intervalRule = sheetItemRule(({ sheet }) => sheet.intervals)
export const oilsRule = sheetItemRule(({ sheet }) => sheet.oils)
export const partRule = sheetItemRule(({ sheet }) => sheet.parts)
export const scheduleRule = sheetItemRule(({ sheet }) => sheet.schedules)
export const sealRule = sheetItemRule(({ sheet }) => sheet.seals)
export const tighteningRule = sheetItemRule(({ sheet }) => sheet.tightenings)

// Lists of the other documents.
export const containerRule = itemRule('stock', ({ document }) => Object.entries(document.containers))
export const wrenchRule = itemRule('toolbox', ({ document }) => Object.entries(document.wrenches))
/** Entries and tightenings of a record that is judged against its sheet; see `RecordIndex`. */
export const entryRule = itemRule('service-record', ({ record }) => record.entries)
export const recordedTighteningRule = itemRule('service-record', ({ record }) => record.tightenings)
