# SPDX-License-Identifier: MIT
# Sourced by app/setup.sh: what ninja and apt-get say while they work, told in a line every few seconds on
# standard error; at a terminal the line is rewritten in place.

progress_every=${TAILPOINT_PROGRESS_SECONDS:-5} # seconds between two lines; 0 tells every step
[ ! -t 2 ] || progress_every=${TAILPOINT_PROGRESS_SECONDS:-1}
progress_at=     # when the last line was told
progress_width=0 # of the line that stands at the terminal

# Whether it is time for a line: asked before one is made, because a tool can say thousands.
progress_is_due() { [ -z "$progress_at" ] || [ $((SECONDS - progress_at)) -ge "$progress_every" ]; }

tell_progress() {
    [ -n "$1" ] || return 0
    progress_at=$SECONDS
    if [ -t 2 ]; then
        printf '\r%-*s' "$progress_width" "$1" >&2
        progress_width=${#1}
    else
        printf '%s\n' "$1" >&2
    fi
}

# Leaves the terminal's line free for the next words.
end_progress() {
    [ "$progress_width" = 0 ] || printf '\r%-*s\r' "$progress_width" '' >&2
    progress_at= progress_width=0
}

# How long $1 seconds are, in words.
about() {
    if [ "$1" -lt 60 ]; then
        echo "less than a minute"
    elif [ "$1" -lt 105 ]; then
        echo "about a minute"
    else
        echo "about $((($1 + 30) / 60)) minutes"
    fi
}

# The line for $1 steps done of $2 in $3 seconds. What is left is estimated once a tenth of a minute tells something.
build_line() {
    local line="Building: $1 of $2 steps ($((100 * $1 / $2)) %)"
    [ "$1" -eq 0 ] || [ "$3" -lt 6 ] || line+=", $(about $(($3 * ($2 - $1) / $1))) left"
    echo "$line"
}

# Reads ninja's output ("[12/340] Building …") to its end and keeps it in the file $1.
# A step can take longer than the time between two lines, so the waiting itself tells too.
build_progress() {
    local line part= done=0 total=0 began=$SECONDS status
    while true; do
        status=0
        IFS= read -r -t 1 line || status=$?
        part+=$line
        if [ $status -gt 128 ]; then # nothing new, or half a line
            [ "$total" = 0 ] || ! progress_is_due || tell_progress "$(build_line "$done" "$total" $((SECONDS - began)))"
            continue
        fi
        [ $status = 0 ] || [ -n "$part" ] || break
        printf '%s\n' "$part" >>"$1"
        # "Re-checking globbed directories", "Re-running CMake" have a count of their own before the build's.
        if [[ $part != *'] Re-'* && $part =~ ^\[([0-9]+)/([0-9]+)\] ]]; then
            done=${BASH_REMATCH[1]} total=${BASH_REMATCH[2]}
            ! progress_is_due || tell_progress "$(build_line "$done" "$total" $((SECONDS - began)))"
        fi
        part=
        [ $status = 0 ] || break
    done
    end_progress
}

# Of ninja's output in the file $1 the words on what failed, without the steps that went well.
failed_words() {
    awk '/^\[[0-9]+\/[0-9]+\]/ { shown = 0 } /^FAILED: / { shown = 1 } shown || /^(ninja|CMake Error|Error)/' "$1"
}

# Its first failure in a line: the compiler's first error, else the step.
first_failure() {
    { grep -m 1 -E '(^|[ :])(fatal )?error: ' "$1" || grep -m 1 '^FAILED: ' "$1" || tail -n 1 "$1"; } | cut -c 1-200
}

# The line for one of apt-get's status lines ("pmstatus:package:34.5:Unpacking package"); nothing for other lines.
install_line() {
    [[ $1 =~ ^(dl|pm)status:[^\ ]*:([0-9]+)(\.[0-9]+)?:(.*)$ ]] || return 0
    if [ "${BASH_REMATCH[1]}" = dl ]; then
        echo "Fetching packages (${BASH_REMATCH[2]} %): ${BASH_REMATCH[4]}"
    else
        echo "Installing packages (${BASH_REMATCH[2]} %): ${BASH_REMATCH[4]}"
    fi
}

# Reads apt-get's output with its status lines and keeps the rest in the file $1.
install_progress() {
    local line
    while IFS= read -r line || [ -n "$line" ]; do
        case "$line" in
        dlstatus:* | pmstatus:*) ! progress_is_due || tell_progress "$(install_line "$line")" ;;
        *) printf '%s\n' "$line" >>"$1" ;;
        esac
    done
    end_progress
}
