# Completion of loudlint for bash. To use it:
#
#   source <(loudlint completion bash)
#
# or write its output to a file that bash reads when it starts.

_loudlint() {
  local kind word
  COMPREPLY=()
  {
    read -r kind
    while IFS=$'\t' read -r word _; do
      COMPREPLY+=("$word")
    done
  } < <(loudlint completion --typed -- "${COMP_WORDS[@]:1:COMP_CWORD}" 2>/dev/null)
}

# Where nothing is offered, bash completes files by itself.
complete -o default -o filenames -F _loudlint loudlint
