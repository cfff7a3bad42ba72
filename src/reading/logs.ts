/** Words that speak to whoever writes it down, and order nothing of the crew. */
export const TO_LOG = /^(?:log|log me|record|enter|mark down|write down|put down|chalk up|ap[uú]nt\w*|an[oó]t\w*)$/i
