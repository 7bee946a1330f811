#compdef loudlint
# Completion of loudlint for zsh. To use it, in a shell where compinit has run:
#
#   source <(loudlint completion zsh)
#
# or write its output to a file _loudlint in a folder of $fpath.

_loudlint() {
  local -a lines offers
  local line
  lines=("${(@f)$(loudlint completion --typed -- "${(@Q)words[2,CURRENT]}" 2>/dev/null)}")
  if [[ $lines[1] == files ]]; then
    _files
    return
  fi
  for line in "${(@)lines[2,-1]}"; do
    [[ -n $line ]] && offers+=("${${line%%$'\t'*}//:/\\:}:${line#*$'\t'}")
  done
  _describe -V loudlint offers
}

if [[ $funcstack[1] == _loudlint ]]; then
  _loudlint "$@"
else
  compdef _loudlint loudlint
fi
