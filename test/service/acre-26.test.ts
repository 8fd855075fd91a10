import { expectPlan } from '../support/expectPlan.js'

expectPlan('acre-26')
