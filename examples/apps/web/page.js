import { judgeInterval } from 'drivetrain-service/v1/interval'
import { explain } from 'drivetrain-service/v1/message'
import { enCalculations } from 'drivetrain-service/v1/message/en'
import { checkWrench } from 'drivetrain-service/v1/torque'

/** A figure as a manual prints it, or a date; anything else is not asked of the library. */
const FIGURE = /^\d{1,6}(\.\d{1,3})?$|^\d{4}-\d\d-\d\d$/

function answerDue({ every, lastDate, last, today, now }) {
  return judgeInterval(
    {
      every: { kind: 'interval', hours: every },
      last: { date: lastDate, hours: Number(last) },
      now: { date: today, hours: Number(now) },
    },
    { soon: { hours: 10 } },
  )
}

/** A click wrench with a mark at each N·m, and the error that its standard permits. */
function answerTorque({ min, max, lowest, highest }) {
  const scale = { unit: 'N.m', lowest: Number(lowest), highest: Number(highest), graduation: 1 }
  return checkWrench(
    {
      name: 'your wrench',
      type: 'click',
      drive: '1/2 in',
      scales: [scale],
      accuracy: { kind: 'ISO 6789' },
    },
    { kind: 'torque', threadCondition: 'dry', torque: { kind: 'limits', min, max, unit: 'N.m' } },
    { iso6789: '2017' },
  )
}

function showAnswers(id, answer) {
  const form = document.getElementById(id)
  const output = form.querySelector('output')
  form.addEventListener('input', () => {
    const values = Object.fromEntries(new FormData(form))
    if (!Object.values(values).every((text) => FIGURE.test(text))) {
      output.textContent = 'Fill each field, figures with digits such as 250 or 301.4.'
      return
    }
    try {
      const result = answer(values)
      const setting = result.setting?.setting
      const title = setting ? `Set ${setting.value} N·m: ${result.verdict}` : result.verdict
      output.textContent = [title, ...explain(result, enCalculations)].join('\n')
    } catch (error) {
      // A figure out of range, such as an interval of 0 h or a wrench whose lowest mark is above its highest.
      output.textContent = `These figures cannot be used: ${error.message}`
    }
  })
}

showAnswers('due', answerDue)
showAnswers('torque', answerTorque)
