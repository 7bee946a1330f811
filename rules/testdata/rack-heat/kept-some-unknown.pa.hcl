# No limit is set: what is known is told, and what is left out.
amplifier "A" { # expect pass: 1 unit gives off 138.2 W && assumed 2 units are left out
  rated_power = "240 W"
  mains_idle  = "25 W"
  mains_full  = "430 W"
}
amplifier "B" { rated_power = "240 W" }
mixer "M" {}
