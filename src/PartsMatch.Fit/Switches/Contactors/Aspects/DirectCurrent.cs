using PartsMatch.Fit.Switches.Contacts;

namespace PartsMatch.Fit.Switches.Contactors.Aspects;

/// <summary>Does the contactor switch the direct current on it?</summary>
public sealed class DirectCurrent : DirectCurrentAspect<ContactorSpec, ContactorSite>;
