// SPDX-License-Identifier: MIT
#ifdef TAILPOINT_HAS_SM

#include "tests/whole/window/session_manager.h"

#include "tests/whole/window/wait.h"

#include <atomic>
#include <cstdlib>
#include <cstring>
#include <mutex>
#include <poll.h>
#include <thread>

#include <X11/SM/SMlib.h>

#include <X11/ICE/ICEutil.h>

namespace whole {

struct SessionManager::State {
    IceListenObj* listening = nullptr;
    int count = 0;
    IceConn connection = nullptr;
    SmsConn client = nullptr;
    bool isRegistered = false, hasSaved = false, hasGone = false;
    std::mutex mutex; ///< of all that is here, and of the library
    std::atomic<bool> isEnding = false;
    std::thread worker; ///< a client waits for answers before it has a window

    void work();
    void begin() {
        worker = std::thread([this] {
            while (!isEnding) {
                {
                    const std::lock_guard lock(mutex);
                    work();
                }
                std::this_thread::sleep_for(std::chrono::milliseconds(5));
            }
        });
    }
    void end() {
        isEnding = true;
        if (worker.joinable())
            worker.join();
    }
    bool until(bool State::*done) {
        return eventually([&] {
            const std::lock_guard lock(mutex);
            return this->*done;
        });
    }
};

namespace {

Bool everybody(char*) {
    return True;
}

char* copied(const char* text) {
    return strdup(text);
}

template <class S>
Status registered(SmsConn client, SmPointer data, char* previous) {
    if (previous) { // none of ours
        std::free(previous);
        return 0;
    }
    char* id = copied("1");
    SmsRegisterClientReply(client, id);
    std::free(id);
    SmsSaveYourself(client, SmSaveLocal, False, SmInteractStyleNone,
                    False); // as the protocol has it for who comes first
    static_cast<S*>(data)->isRegistered = true;
    return 1;
}
void interactAsked(SmsConn client, SmPointer, int) {
    SmsInteract(client);
}
void interactDone(SmsConn, SmPointer, Bool) {}
void saveAsked(SmsConn, SmPointer, int, Bool, int, Bool, Bool) {}
void secondPhaseAsked(SmsConn client, SmPointer) {
    SmsSaveYourselfPhase2(client);
}
template <class S>
void saved(SmsConn client, SmPointer data, Bool) {
    static_cast<S*>(data)->hasSaved = true;
    Q_UNUSED(client);
}
template <class S>
void gone(SmsConn client, SmPointer data, int count, char** reasons) {
    SmFreeReasons(count, reasons);
    auto* state = static_cast<S*>(data);
    SmsCleanUp(client);
    IceSetShutdownNegotiation(state->connection, False);
    IceCloseConnection(state->connection);
    state->connection = nullptr;
    state->hasGone = true;
}
void propertiesSet(SmsConn, SmPointer, int count, SmProp** properties) {
    for (int i = 0; i < count; ++i)
        SmFreeProperty(properties[i]);
    std::free(properties);
}
void propertiesDeleted(SmsConn, SmPointer, int count, char** names) {
    for (int i = 0; i < count; ++i)
        std::free(names[i]);
    std::free(names);
}
void propertiesAsked(SmsConn client, SmPointer) {
    SmsReturnProperties(client, 0, nullptr);
}

template <class S>
Status newClient(SmsConn client, SmPointer data, unsigned long* mask, SmsCallbacks* calls, char**) {
    static_cast<S*>(data)->client = client;
    *mask = SmsRegisterClientProcMask | SmsInteractRequestProcMask | SmsInteractDoneProcMask |
            SmsSaveYourselfRequestProcMask | SmsSaveYourselfP2RequestProcMask | SmsSaveYourselfDoneProcMask |
            SmsCloseConnectionProcMask | SmsSetPropertiesProcMask | SmsDeletePropertiesProcMask |
            SmsGetPropertiesProcMask;
    calls->register_client = {registered<S>, data};
    calls->interact_request = {interactAsked, data};
    calls->interact_done = {interactDone, data};
    calls->save_yourself_request = {saveAsked, data};
    calls->save_yourself_phase2_request = {secondPhaseAsked, data};
    calls->save_yourself_done = {saved<S>, data};
    calls->close_connection = {gone<S>, data};
    calls->set_properties = {propertiesSet, data};
    calls->delete_properties = {propertiesDeleted, data};
    calls->get_properties = {propertiesAsked, data};
    return 1;
}

bool hasInput(int descriptor) {
    pollfd waited{descriptor, POLLIN, 0};
    return poll(&waited, 1, 0) > 0;
}

} // namespace

void SessionManager::State::work() {
    for (int i = 0; i < count && !connection; ++i)
        if (hasInput(IceGetListenConnectionNumber(listening[i]))) {
            IceAcceptStatus status{};
            connection = IceAcceptConnection(listening[i], &status);
        }
    while (connection && hasInput(IceConnectionNumber(connection)))
        if (IceProcessMessages(connection, nullptr, nullptr) == IceProcessMessagesIOError) {
            connection = nullptr; // it went without a word
            hasGone = true;
        }
}

SessionManager::SessionManager() : m_state(std::make_unique<State>()) {
    char error[256] = "";
    IceSetIOErrorHandler([](IceConn) {}); // else the test ends with its client
    if (!SmsInitialize("tailpoint", "1", newClient<State>, m_state.get(), everybody, sizeof error, error) ||
        !IceListenForConnections(&m_state->count, &m_state->listening, sizeof error, error))
        return;
    for (int i = 0; i < m_state->count; ++i)
        IceSetHostBasedAuthProc(m_state->listening[i], everybody);
    m_state->begin();
}

SessionManager::~SessionManager() {
    m_state->end();
    if (m_state->listening)
        IceFreeListenObjs(m_state->count, m_state->listening);
}

QString SessionManager::address() const {
    if (!m_state->listening)
        return {};
    char* names = IceComposeNetworkIdList(m_state->count, m_state->listening);
    const QString address = QString::fromLocal8Bit(names);
    std::free(names);
    return address;
}

/// Registered, and done with the saving that belongs to it.
bool SessionManager::waitForClient() {
    return m_state->until(&State::isRegistered) && m_state->until(&State::hasSaved);
}

bool SessionManager::askToSave() {
    {
        const std::lock_guard lock(m_state->mutex);
        m_state->hasSaved = false;
        SmsSaveYourself(m_state->client, SmSaveBoth, True, SmInteractStyleAny, False);
    }
    return m_state->until(&State::hasSaved);
}

bool SessionManager::callOff() {
    const std::lock_guard lock(m_state->mutex);
    SmsShutdownCancelled(m_state->client);
    return !m_state->hasGone;
}

bool SessionManager::sendAway() {
    {
        const std::lock_guard lock(m_state->mutex);
        SmsDie(m_state->client);
    }
    return m_state->until(&State::hasGone);
}

} // namespace whole

#endif
