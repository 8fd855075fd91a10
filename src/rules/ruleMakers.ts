import type { Severity } from '../base/index.js'
import type { DocumentCodes } from './codes.js'
import type { Rule, RuleFinding, RuleInput, RuleParams, SubjectKind } from './rule.js'

/** Makes rules about one kind of document, or several. */
export const ruleAbout =
  <Kind extends SubjectKind>(...about: readonly Kind[]) =>
  <Code extends keyof DocumentCodes>(
    code: Code,
    severity: Severity,
    check: Rule<Kind, Code>['check'],
  ): Rule<Kind, Code> => ({ code, severity, about, check })

/** Makes rules that judge each item of a list. */
const ruleOfEach =
  <Kind extends SubjectKind, Each>(about: Kind, list: (input: RuleInput<Kind>) => readonly Each[]) =>
  <Code extends keyof DocumentCodes>(
    code: Code,
    severity: Severity,
    judge: (
      each: Each,
      input: RuleInput<Kind>,
    ) => RuleFinding<RuleParams<Code>> | readonly RuleFinding<RuleParams<Code>>[],
  ): Rule<Kind, Code> => ({
    code,
    severity,
    about,
    check: (input) => list(input).flatMap((each) => judge(each, input)),
  })

const ruleOfSheet = <Each>(list: (input: RuleInput<'spec-sheet'>) => readonly Each[]) =>
  ruleOfEach('spec-sheet', list)

export const sheetRule = ruleAbout('spec-sheet')
export const logRule = ruleAbout('machine-log')
export const toolboxRule = ruleAbout('toolbox')
export const recordRule = ruleAbout('service-record')

// Lists of a sheet; see `SheetIndex`.
export const conditionRule = ruleOfSheet(({ sheet }) => sheet.conditions)
export const disagreementRule = ruleOfSheet(({ sheet }) => sheet.disagreements)
export const figureRule = ruleOfSheet(({ sheet }) => sheet.figures)
export const gearcaseRule = ruleOfSheet(({ document }) => Object.entries(document.gearcases))
export const intervalRule = ruleOfSheet(({ sheet }) => sheet.intervals)
export const oilsRule = ruleOfSheet(({ sheet }) => sheet.oils)
export const partRule = ruleOfSheet(({ sheet }) => sheet.parts)
export const scheduleRule = ruleOfSheet(({ sheet }) => sheet.schedules)
export const sealRule = ruleOfSheet(({ sheet }) => sheet.seals)
export const tighteningRule = ruleOfSheet(({ sheet }) => sheet.tightenings)

// Lists of the other documents.
export const containerRule = ruleOfEach('stock', ({ document }) => Object.entries(document.containers))
export const wrenchRule = ruleOfEach('toolbox', ({ document }) => Object.entries(document.wrenches))
/** Entries and tightenings of a record that is judged against its sheet; see `RecordIndex`. */
export const entryRule = ruleOfEach('service-record', ({ record }) => record.entries)
export const tightenedRule = ruleOfEach('service-record', ({ record }) => record.tightenings)
