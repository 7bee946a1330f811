line "North"
{
  home_run = "40 m"
  loudspeaker "N" # high on the wall

  {
    tap = "6 W"
  }
}
safety
{
  earthed = true
}
