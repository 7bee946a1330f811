safety {
  fitted_by   = "north\south"
  local_rules = rules of the country
}
