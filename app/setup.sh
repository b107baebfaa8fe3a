# SPDX-License-Identifier: MIT
# Shared by app/run and tests/run: what must be on the machine, and how the release build is made.
# Sourced with `root` set to the top folder. Everything said here goes to standard error, so that the
# output of a verb stays clean.

# A name with '|' is met by any of its alternatives (Debian renamed a few packages).
build_packages=(
    g++ cmake ninja-build
    qt6-base-dev 'libqt6svg6-dev|qt6-svg-dev' libeigen3-dev
    fonts-stix fonts-dejavu-core
)
test_packages=(
    libgtest-dev libboost-dev qt6-l10n-tools
    xvfb xdotool dbus at-spi2-core
    librsvg2-bin poppler-utils libxml2-utils python3-jsonschema chromium
    texlive-latex-base texlive-latex-recommended texlive-pictures
    desktop-file-utils appstream mandoc shared-mime-info libglib2.0-bin fish zsh
    weston qt6-wayland libsm-dev
)

source "$root/app/progress.sh"

say() { printf '%s\n' "$*" >&2; }
fail() {
    say "$@"
    exit 1
}

is_installed() { [ "$(dpkg-query -W -f '${db:Status-Status}' "$1" 2>/dev/null)" = installed ]; }

# The alternatives of $1, one a line.
alternatives() { tr '|' '\n' <<<"$1"; }

is_met() {
    local name
    while read -r name; do is_installed "$name" && return 0; done < <(alternatives "$1")
    return 1
}

# The first alternative that the package lists know, else the first.
choice() {
    local name
    [[ $1 == *'|'* ]] || { echo "$1" && return; }
    while read -r name; do
        apt-cache show "$name" >/dev/null 2>&1 && echo "$name" && return
    done < <(alternatives "$1")
    echo "${1%%|*}"
}

# How to become root: nothing as root, else sudo (which may ask for a password only at a terminal).
as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    elif [ -t 0 ]; then
        sudo -- "$@"
    else
        sudo -n -- "$@"
    fi
}

# apt-get takes its status descriptor from dpkg: were that the output itself, the packages' own scripts would have none to write to.
# It is opened beyond sudo, which closes all but the first three.
apt() {
    as_root env DEBIAN_FRONTEND=noninteractive sh -c 'exec apt-get -y -q -o Dpkg::Use-Pty=0 -o APT::Status-Fd=3 "$@" 3>&1' \
        apt-get "$@" </dev/null
}

# Installs those of the named packages that are missing; touches nothing when none is.
install_missing() {
    local missing=() package log
    if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
        say "No apt-get here, so nothing is installed. Needed (Debian's names): ${*%%|*}"
        return
    fi
    for package in "$@"; do is_met "$package" || missing+=("$package"); done
    [ ${#missing[@]} -gt 0 ] || return 0
    if [ "$(id -u)" != 0 ] && ! command -v sudo >/dev/null; then
        fail "Packages are missing and only root can install them; as root: apt-get install ${missing[*]%%|*}"
    fi
    log=$(mktemp)
    say "Refreshing the package lists."
    apt update >"$log" 2>&1 || say "The package lists could not be refreshed; trying with those at hand."
    local chosen=()
    for package in "${missing[@]}"; do chosen+=("$(choice "$package")"); done
    say "Installing what is missing: ${chosen[*]}"
    if ! apt install --no-install-recommends "${chosen[@]}" 2>&1 | install_progress "$log"; then
        tail -n 15 "$log" >&2
        rm -f "$log"
        fail "apt-get could not install: ${chosen[*]}"
    fi
    rm -f "$log"
}

build_folder="$root/build/release" # a script may take another

# A build folder that was copied here from another place cannot be used: CMake refuses it.
drop_foreign_build() {
    local cache="$build_folder/CMakeCache.txt"
    [ -f "$cache" ] || return 0
    grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$root" "$cache" || rm -rf "$build_folder"
}

# Configures the release preset with the given extra options; quiet unless it fails.
configure() {
    local log launcher=
    command -v cmake >/dev/null || fail "cmake was not found; install cmake 3.22 or newer and call again."
    command -v ccache >/dev/null && launcher=ccache
    log=$(mktemp)
    if ! (cd "$root" && cmake --preset release -B "$build_folder" "-DCMAKE_CXX_COMPILER_LAUNCHER=$launcher" "$@") >"$log" 2>&1 </dev/null; then
        cat "$log" >&2
        rm -f "$log"
        fail "CMake could not configure the build; its own words stand above."
    fi
    rm -f "$log"
}

# Builds the given targets (all without any): progress, and the compiler's own words where something is wrong.
build() {
    local targets=() log failure
    [ $# -eq 0 ] || targets=(--target "$@")
    export CCACHE_BASEDIR="$root" CCACHE_NOHASHDIR=1 CCACHE_SLOPPINESS=pch_defines,time_macros
    log=$(mktemp)
    if ! NINJA_STATUS='[%f/%t] ' cmake --build "$build_folder" --parallel "$(nproc)" ${targets[@]+"${targets[@]}"} \
        2>&1 </dev/null | build_progress "$log"; then
        failed_words "$log" >&2
        failure=$(first_failure "$log")
        rm -f "$log"
        fail "The build failed: $failure"
    fi
    rm -f "$log"
}
