import { expectPlan } from '../support/expectPlan.js'

expectPlan('reach-55')
