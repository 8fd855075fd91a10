import { Decimal } from 'decimal.js'

// Another package in the same process may set the shared Decimal as it likes; ours must not care.
if (process.env['DRIVETRAIN_HOSTILE_DECIMAL'] === '1')
  Decimal.set({ precision: 2, rounding: Decimal.ROUND_UP, toExpNeg: -1, toExpPos: 1, maxE: 9, minE: -9 })
