# SPDX-License-Identifier: MIT
# bash completion for tailpoint

# Words that an option of a verb takes; nothing: a name of a file, or free text.
_tailpoint_values() {
    case "$1 $2" in
    'report --as') echo text json html latex csv ;;
    'figure --as') echo svg pdf png tex ;;
    *' --tolerances') echo shown hidden ;;
    'sweep --as') echo csv json svg text ;;
    'mark --as') echo text json csv html ;;
    'problems --as') echo pdf html json text ;;
    *' --rounding') echo full hand ;;
    *' --method') echo triangle components ;;
    *' --adding') echo table parallelograms ;;
    *' --construction') echo parallelogram triangle polygon ;;
    *' --pairs') echo all ;;
    *' --stage') echo 0 1 2 3 4 5 6 7 8 all ;;
    *' --theme') echo paper slate contrast ;;
    *' --solution') echo 1 2 ;;
    'figure --paper') echo free a4 a4-landscape letter letter-landscape ;;
    'problems --paper') echo a4 letter ;;
    'figure --values' | 'figure --names') echo shown hidden ;;
    *' --level') echo 1 2 3 ;;
    *' --figures') echo scale free ;;
    *' --family') tailpoint problems --list 2>/dev/null | sed -n 's/^\([a-z-]*\): .*/\1/p' ;;
    esac
}

_tailpoint_options() {
    case "$1" in
    report) echo --as --case --rounding --method --adding --uncertainty --normal --more-after-one --no-solution --tolerances -o --help ;;
    figure)
        echo --construction --pairs --method --marks --stage --theme --solution --width --height --scale --paper --per-cm \
            --dpi --pixels --transparent --values --names --given-only --case --with-cases --tolerances --as -o --help
        ;;
    sweep) echo --vary --from --to --steps --as -o --help ;;
    mark) echo --answer --answers --key --as --names --feedback --points -o --help ;;
    problems)
        echo --family --count --seed --level --roster --from --faded --find-slip --as --solutions --grid --paper --figures \
            --tolerances --list -o --help
        ;;
    esac
}

_tailpoint() {
    local word=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD - 1]} verb=${COMP_WORDS[1]} values
    COMPREPLY=()
    if [ "$COMP_CWORD" = 1 ]; then
        mapfile -t COMPREPLY < <(compgen -W 'report figure sweep mark problems --help --version' -- "$word")
    elif [[ $word == -* ]]; then
        mapfile -t COMPREPLY < <(compgen -W "$(_tailpoint_options "$verb")" -- "$word")
    else
        values=$(_tailpoint_values "$verb" "$before")
        [ -z "$values" ] || mapfile -t COMPREPLY < <(compgen -W "$values" -- "$word")
    fi
    [ ${#COMPREPLY[@]} -gt 0 ] || mapfile -t COMPREPLY < <(compgen -f -- "$word")
}
complete -o filenames -F _tailpoint tailpoint
