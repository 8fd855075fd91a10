import { expectPlan } from '../support/expectPlan.js'

expectPlan('bud-3')
