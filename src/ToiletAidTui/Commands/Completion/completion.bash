# In ~/.bashrc: eval "$(toiletaid completion bash)"
_toiletaid() {
    local line="${COMP_LINE:0:COMP_POINT}"
    mapfile -t COMPREPLY < <("${COMP_WORDS[0]}" "[suggest:${#line}]" "$line" 2>/dev/null)
    # An equals sign parts words here, so only what is behind it is put in.
    case "$COMP_WORDBREAKS" in *=*) COMPREPLY=("${COMPREPLY[@]#--*=}") ;; esac
}
complete -o default -F _toiletaid toiletaid
