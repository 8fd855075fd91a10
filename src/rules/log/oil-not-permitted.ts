import { findOilByName, listOilsUnlessPermitted } from '../lookup/listOilsUnlessPermitted.js'
import { lookUp } from '../lookup/lookUp.js'
import { logRule } from '../ruleMakers.js'

/**
 * A gearcase topped up with an oil that the sheet does not permit there. Two oils are now mixed. Change the
 * oil before the machine works again.
 * Judges: The `oil` of every top-up of a gearcase with its own oil whose `oils` are stated for this machine,
 * if no later record changes the oil of that gearcase. The oil is looked up by its name in the stocks of the
 * set; if no container has that name, grade and categories are read from the name. Finds an oil that meets
 * none of the permitted oils (every answer is `no`).
 * Place: `/topUps/<place>/oil`
 * Params: gearcase: its name; oil: the name in the log; permitted: grade and category, or name, of each permitted oil
 * Harm: machine
 * Source: the judgement of `oilMeets`.
 */
export const rule = logRule('log/oil-not-permitted', 'error', ({ document: log, sheet, set }) => {
  if (sheet === undefined) return []
  const { gearcases, services } = sheet.document
  return (log.topUps ?? []).flatMap(({ date, gearcase, instance, oil }, place) => {
    const isChangedLater = log.records.some(
      (record) =>
        record.date > date &&
        record.entries.some(
          (recordEntry) =>
            recordEntry.gearcase === gearcase &&
            (recordEntry.instance === undefined || recordEntry.instance === instance) &&
            recordEntry.notDone === undefined &&
            lookUp(services, recordEntry.service)?.task === 'change',
        ),
    )
    const oilInLog = findOilByName(oil, set.stocks)
    const permitted = isChangedLater
      ? undefined
      : listOilsUnlessPermitted(sheet.document, gearcase, log.identity, oilInLog)
    if (permitted === undefined) return []
    const params = { gearcase: lookUp(gearcases, gearcase)?.name ?? gearcase, oil, permitted }
    return [{ path: `/topUps/${place}/oil`, params }]
  })
})
