import { Decimal } from 'decimal.js'

// Another package in the same process may change the settings of the shared Decimal; ours must not be affected.
if (process.env['DRIVETRAIN_HOSTILE_DECIMAL'] === '1')
  Decimal.set({ precision: 2, rounding: Decimal.ROUND_UP, toExpNeg: -1, toExpPos: 1, maxE: 9, minE: -9 })
