import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { answerDueForm, answerTorqueForm } from '../../docs/page/answerForms.js'
import * as de from '../../docs/page/labels/de.js'
import { questionLabels } from '../../docs/page/labels/en.js'
import { law } from '../support/law.js'

const MARKS = { decimal: '.', group: ' ' }
const WRENCH = { lowest: '40', highest: '300', step: '2', scale: 'lbf.in', error: '4' }
const TORQUE = { ...WRENCH, value: '30', tolerance: '3', unit: 'N.m' }
const DUE = {
  hours: '250',
  months: '12',
  lastDate: '2022-11-20',
  lastHours: '301.4',
  nowDate: '2023-10-06',
  nowHours: '512.6',
}

describe('the two forms', () => {
  it('a setting with the actual torque', () => {
    // 266 lbf·in are 30.054 N·m (1 lbf·in = 0.1129848290276167 N·m, NIST SP 811); divided by 1.04 and 0.96 in the worst case.
    expect(answerTorqueForm(TORQUE, MARKS, questionLabels).text).toMatch(
      /^Set 266\u00a0lbf·in\. Actual torque: 28\.9\u00a0N·m to 31\.31\u00a0N·m\.$/,
    )
    expect(answerTorqueForm({ ...TORQUE, value: '60' }, MARKS, questionLabels).text).toBe('Does not fit.')
    expect(answerTorqueForm({ ...TORQUE, tolerance: '' }, MARKS, questionLabels).text).toContain('with care')
  })

  it('due or not', () => {
    expect(answerDueForm(DUE, MARKS, questionLabels).text).toBe('Not due: 45 days left, due on 2023-11-20.')
    expect(answerDueForm({ ...DUE, nowHours: '560' }, MARKS, questionLabels).text).toBe(
      'Overdue: 8.6\u00a0h over, due at 551.4\u00a0h.',
    )
    expect(answerDueForm({ ...DUE, months: '', nowHours: '' }, MARKS, questionLabels).text).toBe(
      'Cannot tell.',
    )
  })

  it('in another language, with its marks', () => {
    const marks = { decimal: ',', group: ' ' }
    expect(answerDueForm({ ...DUE, nowHours: '560' }, marks, de.questionLabels).text).toBe(
      'Überfällig: 8,6\u00a0h darüber, fällig bei 551,4\u00a0h.',
    )
    expect(answerTorqueForm({ ...TORQUE, value: '' }, marks, de.questionLabels).text).toBe(
      'Das Drehmoment eingeben, das die Anleitung nennt.',
    )
  })

  it('each field that cannot be used is named in a sentence', () => {
    expect(answerTorqueForm({ ...TORQUE, value: '' }, MARKS, questionLabels).text).toContain('torque')
    expect(answerTorqueForm({ ...TORQUE, highest: '40' }, MARKS, questionLabels).text).toContain(
      'highest mark',
    )
    expect(answerDueForm({ ...DUE, hours: '', months: '' }, MARKS, questionLabels).text).toContain(
      'at least one limit',
    )
    expect(answerDueForm({ ...DUE, lastDate: '2024-01-01' }, MARKS, questionLabels).text).toContain(
      'after today',
    )
  })

  it('any text in any field gives a sentence', () => {
    const field = fc.oneof(
      fc.string(),
      fc.constantFrom('', '0', '-1', '1e9', '0.0000001', 'NaN', '999999999', '3.5'),
    )
    law(2000, fc.constantFrom(...Object.keys(TORQUE)), field, (name, text) => {
      // The units come from a closed list.
      if (name === 'unit' || name === 'scale') return
      expect(answerTorqueForm({ ...TORQUE, [name]: text }, MARKS, questionLabels).text).toMatch(/[.]$/)
    })
    const date = fc.oneof(field, fc.constantFrom('2023-02-30', '0000-01-01', '9999-12-31'))
    law(2000, fc.constantFrom(...Object.keys(DUE), 'km', 'lastKm', 'nowKm'), date, (name, text) => {
      expect(answerDueForm({ ...DUE, [name]: text }, MARKS, questionLabels).text).toMatch(/[.]$/)
    })
  })
})
