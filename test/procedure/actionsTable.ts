import { chooseSeverity } from '../../src/procedure/needs.js'
import { ACTIONS } from '../../src/v1/procedure.js'

/** The table of actions as Markdown, for `docs/procedure.md`. */
export function writeActionsTable(): string {
  const list = (items: readonly string[]) => (items.length === 0 ? '–' : items.join(', '))
  const head = [
    '| action | done on | conditions | result | cautions | tools and supplies | minutes |',
    '| --- | --- | --- | --- | --- | --- | --- |',
  ]
  const secured = ACTIONS['clean around'].needs.filter((name) => ACTIONS['nip by hand'].needs.includes(name))
  const rows = Object.entries(ACTIONS).map(([action, row]) => {
    const isSecured = secured.every((name) => row.needs.includes(name))
    const needs = isSecured
      ? ['*secured*', ...row.needs.filter((name) => !secured.includes(name))]
      : [...row.needs]
    const hazards = row.hazards.map(
      ({ code, signal }) => `${code.replace('procedure/caution-', '').replaceAll('-', ' ')} (${signal})`,
    )
    const cells = [
      action,
      list(row.on),
      list(needs.map((name) => (name.startsWith('*') ? name : `\`${name}\``))),
      list(row.changes),
      list(hazards),
      list([...row.tools, ...row.supplies]),
      String(row.minutes),
    ]
    return `| ${cells.join(' | ')} |`
  })
  const warnings = [...new Set(Object.values(ACTIONS).flatMap((row) => row.needs))].filter(
    (name) => chooseSeverity(name) === 'warning',
  )
  return [
    `*Secured* means the conditions ${list(secured.map((name) => `\`${name}\``))}.`,
    `Reported as warnings: ${list(warnings.map((name) => `\`${name}\``))}. The others are errors.`,
    '',
    ...head,
    ...rows,
  ].join('\n')
}
