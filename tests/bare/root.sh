# SPDX-License-Identifier: MIT
# A bare Debian in a folder, with mounts and processes of its own. Shared by the scripts here; sourced with bash's errexit on.
# TAILPOINT_BARE is the folder for roots and logs; TAILPOINT_MIRROR, where it is set, the archive to take packages from.
folder=${TAILPOINT_BARE:-/var/tmp/tailpoint-bare}
mirror=${TAILPOINT_MIRROR:-}

say() { printf '%s\n' "$*" >&2; }
fail() {
    say "$@"
    exit 2
}

# debootstrap knows the suites of its own time; a later one is made like sid, from a copy of what it knows.
teach_suite() {
    local known=/usr/share/debootstrap
    [ ! -e "$known/scripts/$suite" ] || return 0
    export DEBOOTSTRAP_DIR="$folder/recipes"
    mkdir -p "$DEBOOTSTRAP_DIR"
    cp -r "$known/." "$DEBOOTSTRAP_DIR/"
    ln -sf sid "$DEBOOTSTRAP_DIR/scripts/$suite"
}

# The host's way to the archive, if it has one of its own: proxies, certificates, name servers; no hooks.
take_over_network() {
    [ ! -e /etc/resolv.conf ] || cp -L /etc/resolv.conf "$root/etc/resolv.conf"
    ! command -v apt-config >/dev/null || apt-config dump | grep '^Acquire::' >"$root/etc/apt/apt.conf.d/90host" || true
}

make_root() {
    local log="$folder/$suite.debootstrap.log"
    [ ! -e "$root/.made" ] || return 0
    say "Making a bare $suite in $root (a few minutes)."
    mkdir -p "$root"
    teach_suite
    debootstrap --variant=minbase --include=ca-certificates,git "$suite" "$root" ${mirror:+"$mirror"} >"$log" 2>&1 </dev/null || {
        tail -n 3 "$log" >&2
        fail "debootstrap could not make $suite; its log is $log"
    }
    touch "$root/.made"
}

# The devices that a program may expect, and none of the host's others.
mount_all() {
    local device
    mount -t proc proc "$root/proc"
    mount -t tmpfs -o mode=755 tmpfs "$root/dev"
    for device in null zero full random urandom tty; do
        touch "$root/dev/$device"
        mount --bind "/dev/$device" "$root/dev/$device"
    done
    mkdir "$root/dev/pts" "$root/dev/shm"
    mount -t tmpfs -o mode=1777 tmpfs "$root/dev/shm"
    mount -t devpts -o newinstance,ptmxmode=0666,mode=620 devpts "$root/dev/pts"
    ln -s pts/ptmx "$root/dev/ptmx"
    ln -s /proc/self/fd "$root/dev/fd"
    ln -s fd/0 "$root/dev/stdin"
    ln -s fd/1 "$root/dev/stdout"
    ln -s fd/2 "$root/dev/stderr"
}

# Runs $1 in the root with an environment of its own; the proxies of the host are the only thing taken over.
run_inside() {
    local proxies=() name
    for name in http_proxy https_proxy no_proxy HTTP_PROXY HTTPS_PROXY NO_PROXY; do
        [ -z "${!name:-}" ] || proxies+=("$name=${!name}")
    done
    chroot "$root" env -i HOME=/root LANG=C.UTF-8 PATH=/usr/local/sbin:/usr/local/bin:/usr/sbin:/usr/bin:/sbin:/bin \
        ${proxies[@]+"${proxies[@]}"} bash -c "$1" </dev/null
}

# Sets `suite` and its `root`; $2 tells roots of one suite apart.
take_suite() {
    [[ $1 =~ ^[a-z]+$ ]] || fail "'$1' is no name of a Debian suite; for example: bookworm, trixie"
    suite=$1 root="$folder/$1${2:-}"
}

is_inside() { [ "${TAILPOINT_BARE_INSIDE:-}" = yes ]; }

# Ends everything that runs in the root; its mounts go with it.
stop() {
    trap - INT TERM HUP
    kill -KILL "$1" 2>/dev/null || true
    wait "$1" 2>/dev/null || true
    say "Interrupted; logs and root are left in $folder."
    exit 130
}

# Calls $1 with the rest once more, as root in namespaces of its own, and tidies up behind it unless `keep` is yes.
in_namespaces() {
    local status=0
    [ "$(id -u)" = 0 ] || fail "making a root takes root: sudo ${1#"$checkout/"} $suite"
    command -v debootstrap >/dev/null || fail "debootstrap was not found; as root: apt-get install debootstrap"
    mkdir -p "$folder"
    TAILPOINT_BARE_INSIDE=yes TAILPOINT_BARE=$folder unshare --mount --pid --fork --kill-child=KILL -- "$@" &
    namespaces=$!
    trap 'stop "$namespaces"' INT TERM HUP
    wait "$namespaces" || status=$?
    # Out here nothing of ours is mounted in the root; where somebody else mounted something, it is not removed.
    if [ "$keep" = no ] && ! grep -qF " $root/" /proc/self/mounts; then
        rm -rf --one-file-system "$root"
    fi
    exit $status
}
