import { expectPlan } from '../support/expectPlan.js'

expectPlan('tind-4')
