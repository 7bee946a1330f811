# A consultant's specification
#
# What the (invented) harbour office of Gullmantle asks of every public-address
# design that is handed in, beyond what loudlint asks by itself. A reviewer holds
# a design against it without touching the design:
#
#     loudlint check --criteria examples/consultant_criteria.pa.hcl examples/ferry_terminal.pa.hcl
#
# A job that is to keep to it from the start uses it instead:
#
#     use { file = "consultant_criteria.pa.hcl" }
#
# First stand limits of loudlint's own checks, then ten criterions of the
# office's own. `loudlint figures` lists what a criterion can compare; the
# numbers before the names are clauses of the specification, so that each finding
# names its clause. The figures are invented: take none without thinking.

given {
  reserve       = 25    # % of each channel left for later
  over_noise    = "10 dB"
  longest_cable = "500 m"
}

criteria "Harbour office, issue 4" {
  limit "load-margin" {
    warning_margin = "${given.reserve} %"
    note_margin    = "30 %"
  }
  limit "cable-loss" {
    warning_drop = "5 %"
    error_drop   = "10 %"
  }
  limit "polarity" { severity = "warning" }
}

# Cable

criterion "3.1 Cable of a line" {
  each    = "line"
  expect  = cable_m <= given.longest_cable
  message = "Line ${name} has ${cable_m} m of cable; a fault on more than ${given.longest_cable} is not found in a night"
}

criterion "3.2 Conductors" {
  each     = "line"
  when     = constant_voltage
  expect   = conductor_mm2 >= "1.5 mm2"
  message  = "The conductors of line ${name} have ${conductor_mm2} mm²: thinner ones break at terminals"
  severity = "error"
}

criterion "3.3 Power that arrives" {
  each    = "loudspeaker"
  when    = tap_w > 0
  expect  = receives_w >= 0.85 * load_w
  message = "${name} on line ${line} receives ${receives_w} W of the ${load_w} W it is set to"
}

# Amplifiers

criterion "4.1 Reserve" {
  each    = "channel"
  expect  = load_percent <= 100 - given.reserve
  message = "${amplifier} is loaded to ${load_percent} %, which leaves less than ${given.reserve} % for phase two"
}

criterion "4.2 Heat" {
  each    = "system"
  expect  = heat_w <= "600 W"
  message = "The amplifiers leave ${heat_w} W of heat in the kiosk, which has no cooling"
}

# Spaces

criterion "5.1 Speech over noise" {
  each     = "space"
  expect   = least_level_dba - "10 dB" >= noise_dba + given.over_noise
  message  = "Average speech in ${name} is ${least_level_dba - 10 - noise_dba} dB over the noise where it is lowest"
  severity = "error"
}

criterion "5.2 Even level" {
  each    = "space"
  when    = area_m2 <= 1500 && !outdoors
  expect  = spread_db <= 6
  message = "${name} is ${spread_db} dB louder in one place than in another"
}

criterion "5.3 Two lines" {
  each    = "space"
  when    = area_m2 > 400 && loudspeakers > 0
  expect  = lines >= 2
  message = "All ${loudspeakers} loudspeakers of ${name}, ${area_m2} m² large, fall silent with one line"
}

# Controls and desks

criterion "6.1 Controls" {
  each     = "attenuator"
  expect   = lifted || !to_off
  message  = "${name} on line ${line} can silence a page"
  severity = "error"
}

criterion "6.2 Desks" {
  each    = "source"
  when    = kind == "microphone"
  expect  = in_hand_db >= 6 && in_hand_db <= 25 && lead_m <= "20 m"
  message = "${name} has ${in_hand_db} dB in hand and ${lead_m} m of lead; 6 to 25 dB and 20 m are asked for"
}
