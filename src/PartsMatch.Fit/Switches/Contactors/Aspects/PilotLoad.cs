using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Does the relay switch the coils on it?</summary>
public sealed class PilotLoad : PilotLoadAspect<ContactorSpec, ContactorSite>;
