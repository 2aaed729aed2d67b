using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Does the contactor carry the full-load amps of all motors on it?</summary>
public sealed class FullLoad : FullLoadAspect<ContactorSpec, ContactorSite>;
